package trialwood.container.web;

import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import trialwood.container.LotCount;
import trialwood.container.LotCounts;
import trialwood.container.LotLoss;
import trialwood.container.LotLosses;
import trialwood.container.LotRecords;
import trialwood.container.NewCount;
import trialwood.container.NewLoss;
import trialwood.container.web.LotBook.Head;
import trialwood.web.Entry;
import trialwood.web.ForBench;
import trialwood.web.Form;
import trialwood.web.Forms;
import trialwood.web.Measures;
import trialwood.web.NotFound;

/** Putting a count or a loss of a lot right: a new record with a reason, beside the earlier one. */
@Controller
class LotCorrectionPages {

  private static final String WHY = "Say why the earlier record is replaced.";

  private final LotForms lots;
  private final LotCounts counts;
  private final LotLosses losses;
  private final LotRecords records;
  private final Forms forms;
  private final Choices choices;
  private final Measures measures;

  LotCorrectionPages(
      LotForms lots,
      LotCounts counts,
      LotLosses losses,
      LotRecords records,
      Forms forms,
      Choices choices,
      Measures measures) {
    this.lots = lots;
    this.counts = counts;
    this.losses = losses;
    this.records = records;
    this.forms = forms;
    this.choices = choices;
    this.measures = measures;
  }

  record CountForm(
      @Nullable UUID formKey,
      @Nullable String alive,
      @Nullable String saleable,
      @Nullable String on,
      @Nullable String note,
      @Nullable String supersedeReason,
      @Nullable String by)
      implements Form {

    static CountForm of(LotCount count) {
      return new CountForm(
          UUID.randomUUID(),
          String.valueOf(count.alive()),
          Objects.toString(count.saleable(), ""),
          count.onDate().toString(),
          count.note(),
          "",
          Objects.toString(count.recorded().personId(), null));
    }

    void correct(LotRecords records, UUID earlier, Entry entry, Choices choices) {
      NewCount count =
          new NewCount(
              entry.day("on", on, choices.today()),
              entry.count("alive", alive),
              entry.countIfAny("saleable", saleable),
              Entry.wordsIfAny(note),
              entry.person("by", by));
      String reason = entry.words("supersedeReason", supersedeReason, WHY);
      entry.orRefuse();
      records.correctCount(earlier, count, reason);
    }
  }

  /**
   * @param reason what they died of
   */
  record LossForm(
      @Nullable UUID formKey,
      @Nullable String number,
      @Nullable String reason,
      @Nullable String on,
      @Nullable String supersedeReason,
      @Nullable String by)
      implements Form {

    static LossForm of(LotLoss loss) {
      return new LossForm(
          UUID.randomUUID(),
          String.valueOf(loss.number()),
          loss.reason(),
          loss.onDate().toString(),
          "",
          Objects.toString(loss.recorded().personId(), null));
    }

    void correct(LotRecords records, UUID earlier, Entry entry, Choices choices) {
      NewLoss loss =
          new NewLoss(
              entry.day("on", on, choices.today()),
              entry.count("number", number),
              entry.words("reason", reason, "Say what they died of, as far as you can see."),
              entry.person("by", by));
      String why = entry.words("supersedeReason", supersedeReason, WHY);
      entry.orRefuse();
      records.correctLoss(earlier, loss, why);
    }
  }

  @GetMapping("/containers/{label}/counts/{id}")
  @ForBench
  String openCount(@PathVariable String label, @PathVariable UUID id, Model model) {
    Head lot = lots.lot(label);
    LotCount count = count(lot, id);
    model.addAttribute("form", CountForm.of(count));
    return countPage(lot, count, model);
  }

  @PostMapping("/containers/{label}/counts/{id}")
  @ForBench
  String correctCount(
      @PathVariable String label,
      @PathVariable UUID id,
      @ModelAttribute("form") @Nullable CountForm form,
      BindingResult said,
      RedirectAttributes next,
      Model model) {
    Head lot = lots.lot(label);
    LotCount count = count(lot, id);
    return forms.store(
            form,
            said,
            () -> Objects.requireNonNull(form).correct(records, id, new Entry(), choices))
        ? backTo(lot, next)
        : countPage(lot, count, model);
  }

  @GetMapping("/containers/{label}/losses/{id}")
  @ForBench
  String openLoss(@PathVariable String label, @PathVariable UUID id, Model model) {
    Head lot = lots.lot(label);
    LotLoss loss = loss(lot, id);
    model.addAttribute("form", LossForm.of(loss));
    return lossPage(lot, loss, model);
  }

  @PostMapping("/containers/{label}/losses/{id}")
  @ForBench
  String correctLoss(
      @PathVariable String label,
      @PathVariable UUID id,
      @ModelAttribute("form") @Nullable LossForm form,
      BindingResult said,
      RedirectAttributes next,
      Model model) {
    Head lot = lots.lot(label);
    LotLoss loss = loss(lot, id);
    return forms.store(
            form,
            said,
            () -> Objects.requireNonNull(form).correct(records, id, new Entry(), choices))
        ? backTo(lot, next)
        : lossPage(lot, loss, model);
  }

  private LotCount count(Head lot, UUID id) {
    return counts
        .findById(id)
        .filter(count -> count.lotId().equals(lot.lotId()))
        .orElseThrow(NotFound.of("such count"));
  }

  private LotLoss loss(Head lot, UUID id) {
    return losses
        .findById(id)
        .filter(loss -> loss.lotId().equals(lot.lotId()))
        .orElseThrow(NotFound.of("such loss"));
  }

  private String countPage(Head lot, LotCount count, Model model) {
    String earlier = "%d alive on %s".formatted(count.alive(), measures.date(count.onDate()));
    return page("container/correct-count", lot, earlier, model);
  }

  private String lossPage(Head lot, LotLoss loss, Model model) {
    String earlier =
        "%d lost on %s: %s".formatted(loss.number(), measures.date(loss.onDate()), loss.reason());
    return page("container/correct-loss", lot, earlier, model);
  }

  private String page(String template, Head lot, String earlier, Model model) {
    model.addAttribute("earlier", earlier);
    return lots.page(template, lot, model);
  }

  private static String backTo(Head lot, RedirectAttributes next) {
    return LotForms.backTo(lot.label(), "Corrected. The earlier record stays readable.", next);
  }
}
