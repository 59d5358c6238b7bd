package trialwood.dossier.web;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.thymeleaf.ITemplateEngine;
import org.thymeleaf.context.Context;
import trialwood.dossier.Dossier;
import trialwood.dossier.Dossiers;
import trialwood.web.ForStaff;
import trialwood.web.Measures;

/** The dossier on paper: the parts of the page, set as a tagged PDF with the fonts in the jar. */
@Controller
class DossierPrint {

  private final Dossiers dossiers;
  private final DossierCandidates candidates;
  private final ITemplateEngine templates;
  private final Measures measures;
  private final Clock clock;

  DossierPrint(
      Dossiers dossiers,
      DossierCandidates candidates,
      ITemplateEngine templates,
      Measures measures,
      Clock clock) {
    this.dossiers = dossiers;
    this.candidates = candidates;
    this.templates = templates;
    this.measures = measures;
    this.clock = clock;
  }

  @GetMapping("/dossiers/{code}.pdf")
  @ForStaff
  ResponseEntity<byte[]> print(@PathVariable String code) {
    return ResponseEntity.ok()
        .contentType(MediaType.APPLICATION_PDF)
        .body(pdf(dossiers.of(candidates.named(code), LocalDate.now(clock))));
  }

  private byte[] pdf(Dossier dossier) {
    String page =
        templates.process(
            "dossier/print",
            new Context(Locale.ENGLISH, Map.of("dossier", dossier, "measures", measures)));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PdfRendererBuilder builder =
        new PdfRendererBuilder()
            .usePdfUaAccessibility(true)
            .useUriResolver((base, uri) -> null)
            .useFont(() -> font("DejaVuSans.ttf"), "DejaVu Sans", 400, FontStyle.NORMAL, true)
            .useFont(() -> font("DejaVuSans-Bold.ttf"), "DejaVu Sans", 700, FontStyle.NORMAL, true)
            .withHtmlContent(page, "about:blank")
            .toStream(out);
    try {
      builder.run();
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
    return out.toByteArray();
  }

  private static InputStream font(String file) {
    return Objects.requireNonNull(DossierPrint.class.getResourceAsStream("/fonts/" + file), file);
  }
}
