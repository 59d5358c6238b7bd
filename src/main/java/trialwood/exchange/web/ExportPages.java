package trialwood.exchange.web;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import trialwood.exchange.Export;
import trialwood.exchange.Sheet;
import trialwood.exchange.Sheets;
import trialwood.web.ForStaff;
import trialwood.web.NotFound;
import trialwood.web.Place;

/** Gives every sheet out as a file that the import takes back. */
@Controller
class ExportPages {

  private final Sheets sheets;
  private final Export export;

  ExportPages(Sheets sheets, Export export) {
    this.sheets = sheets;
    this.export = export;
  }

  @GetMapping("/export")
  @ForStaff
  @Place(key = "export", label = "Export", order = 96)
  String list(Model model) {
    model.addAttribute("sheets", sheets.all());
    return "exchange/export";
  }

  @GetMapping("/export/{name}")
  @ForStaff
  ResponseEntity<byte[]> download(@PathVariable String name) throws IOException {
    Sheet sheet = named(name);
    return file(sheet.fileName(), out -> export.write(sheet, out));
  }

  @GetMapping("/export/{name}/template")
  @ForStaff
  ResponseEntity<byte[]> template(@PathVariable String name) throws IOException {
    Sheet sheet = named(name);
    return file(sheet.name() + "-template.csv", out -> export.writeTemplate(sheet, out));
  }

  private interface Writing {
    void to(OutputStream out) throws IOException;
  }

  private static ResponseEntity<byte[]> file(String name, Writing writing) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    writing.to(bytes);
    return CsvAnswer.of(name, bytes.toByteArray());
  }

  private Sheet named(String name) {
    return sheets.named(name).orElseThrow(NotFound.of("sheet"));
  }
}
