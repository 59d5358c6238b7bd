package trialwood.label.web;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.servlet.ModelAndView;
import trialwood.label.Bearer;
import trialwood.label.Bearers;
import trialwood.label.LabelFormat;
import trialwood.label.LabelFormats;
import trialwood.label.LabelPaper;
import trialwood.label.Printer;
import trialwood.label.Printers;
import trialwood.record.Refused;
import trialwood.web.ForStaff;
import trialwood.web.NotFound;

/** The labels of a run, a batch, a lot's plants, or one thing: what to print, and the print. */
@Controller
@ForStaff
class LabelPages {

  private static final Map<String, BiFunction<Bearers, String, List<Bearer>>> LISTS =
      Map.of(
          "runs", Bearers::ofRun,
          "batches", Bearers::ofBatch,
          "plants", Bearers::ofLot,
          "units", Bearers::of);

  private final Bearers bearers;
  private final LabelFormats formats;
  private final Printers printers;

  LabelPages(Bearers bearers, LabelFormats formats, Printers printers) {
    this.bearers = bearers;
    this.formats = formats;
    this.printers = printers;
  }

  @GetMapping("/labels/{list}/{code}")
  String choose(
      @PathVariable String list,
      @PathVariable String code,
      HttpServletRequest request,
      Model page) {
    List<Bearer> listed = listed(list, code);
    LastChoice chosen = LastChoice.of(request);
    page.addAttribute(
        "form",
        new LabelForm(
            chosen.format(),
            chosen.printer(),
            chosen.start(),
            "1",
            String.valueOf(listed.size()),
            "1"));
    show(listed, page);
    return "label/labels";
  }

  /** The PDF; where something is wrong with the choice, the page again that says what. */
  @GetMapping("/labels/{list}/{code}/print")
  Object print(
      @PathVariable String list,
      @PathVariable String code,
      @ModelAttribute("form") LabelForm form,
      BindingResult said,
      Model page) {
    List<Bearer> listed = listed(list, code);
    try {
      return printed(listed, form.choice(listed.size()));
    } catch (Refused refused) {
      refused.problems().forEach(it -> said.rejectValue(it.field(), "refused", it.sentence()));
      show(listed, page);
      return new ModelAndView("label/labels");
    }
  }

  private ResponseEntity<byte[]> printed(List<Bearer> listed, LabelForm.Choice choice) {
    LabelFormat format =
        formats
            .findByName(choice.format())
            .orElseThrow(() -> new Refused("format", "Pick a paper from the list."));
    Printer printer =
        printers
            .findByName(choice.printer())
            .orElseThrow(() -> new Refused("printer", "Pick a printer from the list."));
    List<Bearer> chosen = choice.of(listed);
    byte[] pdf =
        new LabelPaper(format.layout(), printer)
            .print(chosen.stream().map(bearers::label).toList(), choice.start());
    int next = (choice.start() - 1 + chosen.size()) % format.layout().places() + 1;
    LastChoice last = new LastChoice(format.name(), printer.name(), String.valueOf(next));
    return ResponseEntity.ok()
        .header(HttpHeaders.SET_COOKIE, last.cookie().toString())
        .contentType(MediaType.APPLICATION_PDF)
        .body(pdf);
  }

  private List<Bearer> listed(String list, String code) {
    List<Bearer> listed = LISTS.getOrDefault(list, (all, none) -> List.of()).apply(bearers, code);
    if (listed.isEmpty()) {
      throw new NotFound("label to print");
    }
    return listed;
  }

  private void show(List<Bearer> listed, Model page) {
    page.addAttribute("listed", listed);
    page.addAttribute(
        "batches", listed.stream().map(Bearer::batch).filter(Objects::nonNull).distinct().toList());
    page.addAttribute(
        "formats",
        formats.findAllByOrderByName().stream()
            .collect(
                Collectors.toMap(LabelFormat::name, LabelPages::words, (a, b) -> a, TreeMap::new)));
    page.addAttribute(
        "printers",
        printers.findAllByOrderByName().stream()
            .collect(Collectors.toMap(Printer::name, Printer::name, (a, b) -> a, TreeMap::new)));
  }

  private static String words(LabelFormat format) {
    int places = format.layout().places();
    return places == 1
        ? format.name() + ", one by one"
        : "%s, %d on a sheet".formatted(format.name(), places);
  }
}
