package trialwood.stock.web;

import java.util.Arrays;
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
import trialwood.stock.NewStockEvent;
import trialwood.stock.StockBook;
import trialwood.stock.StockBook.Happened;
import trialwood.stock.StockBook.Standing;
import trialwood.stock.StockEvent;
import trialwood.stock.StockRecords;
import trialwood.web.Entry;
import trialwood.web.ForBench;
import trialwood.web.Form;
import trialwood.web.Forms;
import trialwood.web.NotFound;

/** A stock plant was moved, was tested or died; and putting such a record right. */
@Controller
class StockEventPages {

  private final StockBook book;
  private final StockRecords records;
  private final StockForms stock;
  private final Forms forms;

  StockEventPages(StockBook book, StockRecords records, StockForms stock, Forms forms) {
    this.book = book;
    this.records = records;
    this.stock = stock;
    this.forms = forms;
  }

  record EventForm(
      @Nullable UUID formKey,
      @Nullable String on,
      @Nullable String place,
      @Nullable String agent,
      StockEvent.@Nullable Result result,
      @Nullable String note,
      @Nullable String by,
      @Nullable String supersedeReason)
      implements Form {

    static EventForm of(Happened earlier) {
      return new EventForm(
          UUID.randomUUID(),
          earlier.onDate().toString(),
          earlier.place(),
          earlier.agent(),
          earlier.result(),
          earlier.note(),
          Objects.toString(earlier.personId(), null),
          "");
    }

    NewStockEvent read(StockEvent.Kind kind, StockForms stock) {
      Entry entry = new Entry();
      boolean test = kind == StockEvent.Kind.TESTED;
      NewStockEvent event =
          new NewStockEvent(
              entry.day("on", on, stock.today()),
              kind,
              kind == StockEvent.Kind.MOVED ? Entry.wordsIfAny(place) : null,
              test ? Entry.wordsIfAny(agent) : null,
              test ? result : null,
              Entry.wordsIfAny(note),
              entry.person("by", by));
      entry.orRefuse();
      return event;
    }
  }

  @GetMapping("/stock/{label}/{what}")
  @ForBench
  String open(@PathVariable String label, @PathVariable String what, Model model) {
    Standing plant = stock.plant(label);
    StockEvent.Kind kind = kind(what);
    String today = stock.todayTyped();
    model.addAttribute("form", new EventForm(UUID.randomUUID(), today, "", "", null, "", null, ""));
    return page(plant, kind, null, model);
  }

  @GetMapping("/stock/{label}/{what}/{id}")
  @ForBench
  String openAgain(
      @PathVariable String label, @PathVariable String what, @PathVariable UUID id, Model model) {
    Standing plant = stock.plant(label);
    Happened earlier = earlier(plant, kind(what), id);
    model.addAttribute("form", EventForm.of(earlier));
    return page(plant, earlier.kind(), earlier, model);
  }

  @PostMapping({"/stock/{label}/{what}", "/stock/{label}/{what}/{id}"})
  @ForBench
  String store(
      @PathVariable String label,
      @PathVariable String what,
      @PathVariable(required = false) @Nullable UUID id,
      @ModelAttribute("form") @Nullable EventForm form,
      BindingResult said,
      RedirectAttributes next,
      Model model) {
    Standing plant = stock.plant(label);
    StockEvent.Kind kind = kind(what);
    Happened earlier = id == null ? null : earlier(plant, kind, id);
    return forms.store(form, said, () -> keep(plant, kind, id, Objects.requireNonNull(form)))
        ? StockForms.backTo(plant.label(), "%s: stored.".formatted(plant.label()), next)
        : page(plant, kind, earlier, model);
  }

  private void keep(Standing plant, StockEvent.Kind kind, @Nullable UUID earlier, EventForm form) {
    NewStockEvent event = form.read(kind, stock);
    if (earlier == null) {
      records.happened(plant.stockId(), event);
    } else {
      records.correct(earlier, event, Objects.requireNonNullElse(form.supersedeReason(), ""));
    }
  }

  private static StockEvent.Kind kind(String what) {
    return Arrays.stream(StockEvent.Kind.values())
        .filter(kind -> kind.word().equals(what))
        .findFirst()
        .orElseThrow(NotFound.of("such page"));
  }

  private Happened earlier(Standing plant, StockEvent.Kind kind, UUID id) {
    return book.happened(plant.stockId()).stream()
        .filter(it -> it.id().equals(id) && it.kind() == kind)
        .findFirst()
        .orElseThrow(NotFound.of("such record"));
  }

  private String page(
      Standing plant, StockEvent.Kind kind, @Nullable Happened earlier, Model model) {
    model.addAttribute("plant", plant);
    model.addAttribute("kind", kind.name());
    model.addAttribute("earlier", earlier);
    return stock.page("stock/event", model);
  }
}
