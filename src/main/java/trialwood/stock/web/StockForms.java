package trialwood.stock.web;

import java.time.Clock;
import java.time.LocalDate;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import trialwood.people.Persons;
import trialwood.stock.StockBook;
import trialwood.stock.StockBook.Standing;
import trialwood.web.Measures;
import trialwood.web.NotFound;

/** What the forms of the stock plants have in common. */
@Component
class StockForms {

  private final StockBook book;
  private final Persons persons;
  private final Measures measures;
  private final Clock clock;

  StockForms(StockBook book, Persons persons, Measures measures, Clock clock) {
    this.book = book;
    this.persons = persons;
    this.measures = measures;
    this.clock = clock;
  }

  LocalDate today() {
    return LocalDate.now(clock);
  }

  /** Today, as it stands in a box. */
  String todayTyped() {
    return measures.date(today()).replace('\u00a0', ' ');
  }

  /**
   * @throws NotFound when no stock plant has this label
   */
  Standing plant(String label) {
    return book.labelled(label, today()).orElseThrow(NotFound.of("stock plant " + label));
  }

  String page(String template, Model model) {
    model.addAttribute("people", persons.findByActiveTrueOrderByInitials());
    return template;
  }

  static String backTo(String label, String status, RedirectAttributes next) {
    next.addFlashAttribute("status", status);
    next.addAttribute("label", label);
    return "redirect:/stock/{label}";
  }
}
