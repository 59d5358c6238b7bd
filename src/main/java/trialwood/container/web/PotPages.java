package trialwood.container.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import trialwood.container.Holders;
import trialwood.container.NewLot;
import trialwood.container.NewLot.Taken;
import trialwood.container.Pots;
import trialwood.container.Potting;
import trialwood.lineage.Accessions;
import trialwood.unit.Units;
import trialwood.web.ForBench;
import trialwood.web.Form;
import trialwood.web.Forms;
import trialwood.web.Questions;

/** Potting a lot, out of trays or bought in. */
@Controller
class PotPages {

  private static final int TRAYS = 4;

  private final Potting potting;
  private final Accessions accessions;
  private final Units units;
  private final Holders holders;
  private final Forms forms;
  private final Choices choices;

  PotPages(
      Potting potting,
      Accessions accessions,
      Units units,
      Holders holders,
      Forms forms,
      Choices choices) {
    this.potting = potting;
    this.accessions = accessions;
    this.units = units;
    this.holders = holders;
    this.forms = forms;
    this.choices = choices;
  }

  record SourceRow(@Nullable String label, @Nullable String number) {}

  record PotForm(
      @Nullable UUID formKey,
      @Nullable String lot,
      @Nullable String accession,
      @Nullable UUID containerClass,
      @Nullable String litres,
      @Nullable String on,
      @Nullable String number,
      @Nullable String yard,
      @Nullable String medium,
      @Nullable String feedGrams,
      @Nullable String note,
      @Nullable List<SourceRow> sources,
      @Nullable UUID by,
      @Nullable String asked,
      @Nullable String checked)
      implements Form {}

  /**
   * @param tray label of the tray that was scanned, if any
   */
  @GetMapping("/containers/pot")
  @ForBench
  String open(@RequestParam(required = false) @Nullable String tray, Model model) {
    Optional<Scanned> scanned = Optional.ofNullable(tray).flatMap(this::scanned);
    List<SourceRow> rows =
        Stream.concat(
                scanned.stream().map(it -> new SourceRow(it.tray(), "")),
                Stream.generate(() -> new SourceRow("", "")))
            .limit(TRAYS)
            .toList();
    model.addAttribute(
        "form",
        new PotForm(
            UUID.randomUUID(),
            scanned.map(Scanned::lot).orElse(""),
            scanned.map(Scanned::accession).orElse(""),
            null,
            "",
            choices.todayTyped(),
            "",
            "",
            "",
            "",
            "",
            rows,
            null,
            "",
            ""));
    return page(model);
  }

  /**
   * A tray to pot from.
   *
   * @param lot a label for the new lot that is free
   */
  private record Scanned(String tray, String accession, String lot) {}

  private Optional<Scanned> scanned(String label) {
    return units
        .labelled(label)
        .flatMap(
            tray ->
                holders
                    .of(Objects.requireNonNull(tray.id()), choices.today())
                    .flatMap(accessions::findById)
                    .map(it -> new Scanned(tray.label(), it.code(), freeLabel(it.code()))));
  }

  private String freeLabel(String accession) {
    int year = choices.today().getYear() % 100;
    return IntStream.iterate(1, n -> n + 1)
        .mapToObj(n -> "%02d-%s-%d".formatted(year, accession, n))
        .filter(label -> units.labelled(label).isEmpty())
        .findFirst()
        .orElseThrow();
  }

  @PostMapping("/containers/pot")
  @ForBench
  String pot(
      @ModelAttribute("form") @Nullable PotForm form,
      BindingResult said,
      RedirectAttributes next,
      Model model) {
    if (form == null) {
      throw Boxes.unreadable();
    }
    NewLot lot = read(form, new Boxes(said, choices.today()));
    Questions questions = new Questions(form.asked(), form.checked());
    boolean stored =
        forms.store(
            form,
            said,
            () -> {
              questions.ask(potting.questions(lot));
              potting.pot(lot, questions.orAsk());
            });
    return stored ? LotForms.backTo(lot.label(), status(lot.pots()), next) : page(model);
  }

  private static String status(Pots pots) {
    return pots.mediumLitres()
        .map(litres -> "%d potted in %.0f litres of medium.".formatted(pots.number(), litres))
        .orElseGet(() -> "%d potted.".formatted(pots.number()));
  }

  private NewLot read(PotForm form, Boxes boxes) {
    UUID accession =
        accessions
            .named(Boxes.text(form.accession()))
            .map(found -> Objects.requireNonNull(found.id()))
            .orElse(null);
    Pots pots =
        new Pots(
            boxes.chosen("containerClass", form.containerClass(), "Choose the class of pots."),
            boxes.decimalIfAny("litres", form.litres()),
            boxes.date("on", form.on()),
            boxes.count("number", form.number(), "Write how many were potted, such as 20."),
            Boxes.words(form.yard()),
            Boxes.words(form.note()),
            Boxes.words(form.medium()),
            boxes.decimalIfAny("feedGrams", form.feedGrams()));
    return new NewLot(
        Boxes.text(form.lot()),
        boxes.chosen("accession", accession, "No accession has this code."),
        pots,
        sources(form, boxes),
        form.by());
  }

  private List<Taken> sources(PotForm form, Boxes boxes) {
    List<Taken> taken = new ArrayList<>();
    List<SourceRow> rows = Objects.requireNonNullElse(form.sources(), List.of());
    for (int at = 0; at < rows.size(); at++) {
      String label = Boxes.text(rows.get(at).label());
      if (!label.isEmpty()) {
        String box = "sources[%d]".formatted(at);
        UUID source = units.labelled(label).map(unit -> unit.id()).orElse(null);
        taken.add(
            new Taken(
                boxes.chosen(box + ".label", source, "No tray or lot carries this label."),
                boxes.count(box + ".number", rows.get(at).number(), "How many came from it?")));
      }
    }
    return taken;
  }

  private String page(Model model) {
    model.addAttribute("classes", choices.classes());
    model.addAttribute("people", choices.people());
    return "container/pot";
  }
}
