package trialwood.stock.web;

import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import trialwood.lineage.Accession;
import trialwood.lineage.Accessions;
import trialwood.stock.NewStockPlant;
import trialwood.stock.StockRecords;
import trialwood.unit.Unit;
import trialwood.unit.Units;
import trialwood.web.Entry;
import trialwood.web.ForBench;
import trialwood.web.Form;
import trialwood.web.Forms;

/** Keeping one more plant for cuttings. */
@Controller
class NewStockPages {

  private final StockRecords records;
  private final StockForms stock;
  private final Forms forms;
  private final Accessions accessions;
  private final Units units;
  private final JdbcClient jdbc;

  NewStockPages(
      StockRecords records,
      StockForms stock,
      Forms forms,
      Accessions accessions,
      Units units,
      JdbcClient jdbc) {
    this.records = records;
    this.stock = stock;
    this.forms = forms;
    this.accessions = accessions;
    this.units = units;
    this.jdbc = jdbc;
  }

  /**
   * @param origin code of the batch, or label of the lot or plant
   */
  record PlantForm(
      @Nullable UUID formKey,
      @Nullable String label,
      @Nullable String accession,
      @Nullable String number,
      @Nullable String since,
      @Nullable String place,
      @Nullable String origin,
      @Nullable String note,
      @Nullable String by)
      implements Form {}

  @GetMapping("/stock/new")
  @ForBench
  String open(Model model) {
    String today = stock.todayTyped();
    model.addAttribute(
        "form", new PlantForm(UUID.randomUUID(), "", "", "", today, "", "", "", null));
    return stock.page("stock/new", model);
  }

  @PostMapping("/stock/new")
  @ForBench
  String store(
      @ModelAttribute("form") @Nullable PlantForm form,
      BindingResult said,
      RedirectAttributes next,
      Model model) {
    return forms.store(form, said, () -> records.keep(read(Objects.requireNonNull(form))))
        ? StockForms.backTo(
            Objects.requireNonNullElse(Objects.requireNonNull(form).label(), "").strip(),
            "Kept for cuttings.",
            next)
        : stock.page("stock/new", model);
  }

  private NewStockPlant read(PlantForm form) {
    Entry entry = new Entry();
    String origin = Entry.wordsIfAny(form.origin());
    Optional<UUID> batch = Optional.ofNullable(origin).flatMap(this::batch);
    Optional<UUID> unit =
        batch.isPresent()
            ? Optional.empty()
            : Optional.ofNullable(origin).flatMap(units::labelled).map(Unit::id);
    if (origin != null && batch.isEmpty() && unit.isEmpty()) {
      entry.wrong("origin", "No batch, lot or plant is called %s.".formatted(origin));
    }
    NewStockPlant plant =
        new NewStockPlant(
            entry.words("label", form.label(), "Type the label on its tag."),
            accession(form, entry),
            entry.count("number", form.number()),
            entry.day("since", form.since(), stock.today()),
            entry.words("place", form.place(), "Say where it stands."),
            batch.orElse(null),
            unit.orElse(null),
            Entry.wordsIfAny(form.note()),
            entry.person("by", form.by()));
    entry.orRefuse();
    return plant;
  }

  private UUID accession(PlantForm form, Entry entry) {
    return accessions
        .named(Objects.requireNonNullElse(form.accession(), "").strip())
        .map(Accession::id)
        .orElseGet(
            () -> {
              entry.wrong("accession", "No accession has this code.");
              return new UUID(0, 0);
            });
  }

  private Optional<UUID> batch(String code) {
    return jdbc.sql("select id from batch where upper(code) = upper(:code)")
        .param("code", code)
        .query(UUID.class)
        .optional();
  }
}
