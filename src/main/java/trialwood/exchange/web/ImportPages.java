package trialwood.exchange.web;

import java.io.IOException;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import trialwood.exchange.Import;
import trialwood.exchange.ImportRecords;
import trialwood.exchange.ImportResult;
import trialwood.exchange.Sheet;
import trialwood.exchange.Sheets;
import trialwood.web.ForBreeder;
import trialwood.web.NotFound;
import trialwood.web.Place;

/** Takes files in: checked first, then all or nothing. */
@Controller
class ImportPages {

  private final Sheets sheets;
  private final Import imports;
  private final ImportRecords records;

  ImportPages(Sheets sheets, Import imports, ImportRecords records) {
    this.sheets = sheets;
    this.imports = imports;
    this.records = records;
  }

  /** With a sheet chosen, its columns are explained. */
  @GetMapping("/import")
  @ForBreeder
  @Place(key = "import", label = "Import", order = 95)
  String choose(@RequestParam(required = false) @Nullable String sheet, Model model) {
    return page(sheet == null || sheet.isBlank() ? null : named(sheet), model);
  }

  @PostMapping(path = "/import", params = "take")
  @ForBreeder
  String take(
      @RequestParam(defaultValue = "") String sheet,
      @RequestParam(required = false) @Nullable MultipartFile file,
      Model model,
      RedirectAttributes next)
      throws IOException {
    Sheet chosen = named(sheet);
    if (file == null || file.isEmpty()) {
      return noFile(chosen, model);
    }
    ImportResult result = imports.take(chosen, nameOf(file), file.getBytes());
    if (!result.kept()) {
      return show(chosen, result, model);
    }
    next.addFlashAttribute(
        "status", "Taken in: %,d rows of %s.".formatted(result.rows(), chosen.name()));
    return "redirect:/import";
  }

  @PostMapping("/import")
  @ForBreeder
  String check(
      @RequestParam(defaultValue = "") String sheet,
      @RequestParam(required = false) @Nullable MultipartFile file,
      Model model)
      throws IOException {
    Sheet chosen = named(sheet);
    return file == null || file.isEmpty()
        ? noFile(chosen, model)
        : show(chosen, imports.check(chosen, nameOf(file), file.getBytes()), model);
  }

  private String show(Sheet sheet, ImportResult result, Model model) {
    model.addAttribute("result", result);
    return page(sheet, model);
  }

  private String noFile(Sheet sheet, Model model) {
    model.addAttribute("wrong", "Choose a file that is not empty.");
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
