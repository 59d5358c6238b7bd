package trialwood.container.web;

import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import trialwood.container.Lots;
import trialwood.container.web.LotBook.Head;
import trialwood.web.NotFound;

/** What the forms of one lot have in common: its head on top, and the way back to its page. */
@Component
class LotForms {

  private final LotBook book;
  private final Lots lots;
  private final Choices choices;

  LotForms(LotBook book, Lots lots, Choices choices) {
    this.book = book;
    this.lots = lots;
    this.choices = choices;
  }

  /**
   * @throws NotFound when no lot has this label
   */
  Head lot(String label) {
    return book.head(label).orElseThrow(NotFound.of("lot " + label));
  }

  String page(String template, Head lot, Model model) {
    model.addAttribute("lot", lot);
    model.addAttribute("ledger", lots.ledger(lot.lotId(), choices.today()));
    model.addAttribute("people", choices.people());
    return template;
  }

  static String backTo(String label, String status, RedirectAttributes next) {
    next.addFlashAttribute("status", status);
    next.addAttribute("label", label);
    return "redirect:/containers/{label}";
  }
}
