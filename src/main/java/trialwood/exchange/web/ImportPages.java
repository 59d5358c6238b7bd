package trialwood.exchange.web;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ResponseEntity;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import trialwood.exchange.CheckedFiles;
import trialwood.exchange.CheckedFiles.CheckedFile;
import trialwood.exchange.Import;
import trialwood.exchange.ImportRecords;
import trialwood.exchange.ImportResult;
import trialwood.exchange.ProblemList;
import trialwood.exchange.Sheet;
import trialwood.exchange.Sheets;
import trialwood.people.SignedIn;
import trialwood.web.ForBreeder;
import trialwood.web.NotFound;
import trialwood.web.Place;

/** Takes files in: checked first, then all or nothing. */
@Controller
class ImportPages {

  private final Sheets sheets;
  private final Import imports;
  private final CheckedFiles checked;
  private final ImportRecords records;

  ImportPages(Sheets sheets, Import imports, CheckedFiles checked, ImportRecords records) {
    this.sheets = sheets;
    this.imports = imports;
    this.checked = checked;
    this.records = records;
  }

  /** With a sheet chosen, its columns are explained. */
  @GetMapping("/import")
  @ForBreeder
  @Place(key = "import", label = "Import", order = 95)
  String choose(@RequestParam(required = false) @Nullable String sheet, Model model) {
    return page(sheet == null || sheet.isBlank() ? null : named(sheet), model);
  }

  /** Says what is wrong with a file, and keeps it at hand for whoever sent it. */
  @PostMapping("/import")
  @ForBreeder
  String check(
      @RequestParam(defaultValue = "") String sheet,
      @RequestParam(required = false) @Nullable MultipartFile file,
      @AuthenticationPrincipal SignedIn account,
      Model model)
      throws IOException {
    Sheet chosen = named(sheet);
    if (file == null || file.isEmpty()) {
      model.addAttribute("wrong", "Choose a file that is not empty.");
      return page(chosen, model);
    }
    CheckedFile kept =
        checked.keep(account.getUsername(), chosen.name(), nameOf(file), file.getBytes());
    return show(chosen, kept, imports.check(chosen, kept.name(), kept.bytes()), model);
  }

  /** Takes in the very file that was checked. */
  @PostMapping(path = "/import", params = "checked")
  @ForBreeder
  String take(
      @RequestParam String sheet,
      @RequestParam("checked") UUID ticket,
      @AuthenticationPrincipal SignedIn account,
      Model model,
      RedirectAttributes next) {
    Sheet chosen = named(sheet);
    Optional<CheckedFile> kept =
        checked
            .find(account.getUsername(), ticket)
            .filter(file -> file.sheet().equals(chosen.name()));
    if (kept.isEmpty()) {
      model.addAttribute(
          "wrong",
          "A checked file is kept for %d minutes, and only the last one. Choose it again."
              .formatted(CheckedFiles.KEPT.toMinutes()));
      return page(chosen, model);
    }
    ImportResult result = imports.take(chosen, kept.get().name(), kept.get().bytes());
    if (!result.kept()) {
      return show(chosen, kept.get(), result, model);
    }
    checked.forget(account.getUsername());
    next.addFlashAttribute(
        "status", "Taken in: %,d rows of %s.".formatted(result.rows(), chosen.name()));
    return "redirect:/import";
  }

  /** The bad rows of a checked file with what is wrong beside them. */
  @GetMapping("/import/{ticket}/problems")
  @ForBreeder
  ResponseEntity<byte[]> problems(
      @PathVariable UUID ticket, @AuthenticationPrincipal SignedIn account) {
    CheckedFile kept =
        checked
            .find(account.getUsername(), ticket)
            .orElseThrow(NotFound.of("checked file; check it again"));
    Sheet sheet = named(kept.sheet());
    ImportResult result = imports.check(sheet, kept.name(), kept.bytes());
    return CsvAnswer.of(
        sheet.name() + "-problems.csv",
        ProblemList.of(kept.bytes(), result.problems()).getBytes(StandardCharsets.UTF_8));
  }

  private String show(Sheet sheet, CheckedFile kept, ImportResult result, Model model) {
    model.addAttribute("result", result);
    model.addAttribute("kept", kept);
    return page(sheet, model);
  }

  private String page(@Nullable Sheet sheet, Model model) {
    model.addAttribute("sheets", sheets.all());
    model.addAttribute("chosen", sheet);
    model.addAttribute("records", records.findTop50ByOrderByRecordedAtDesc());
    return "exchange/import";
  }

  private Sheet named(String name) {
    return sheets.named(name).orElseThrow(NotFound.of("sheet"));
  }

  private static String nameOf(MultipartFile file) {
    return Objects.requireNonNullElse(file.getOriginalFilename(), "");
  }
}
