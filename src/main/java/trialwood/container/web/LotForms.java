package trialwood.container.web;

import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import trialwood.container.Lots;
import trialwood.container.NewCare;
import trialwood.container.Tending;
import trialwood.container.web.LotBook.Happened;
import trialwood.container.web.LotBook.Head;
import trialwood.record.Checked;
import trialwood.web.NotFound;

/** What the forms of one lot have in common: its head on top, and the way back to its page. */
@Component
class LotForms {

  private final LotBook book;
  private final Lots lots;
  private final Tending tending;
  private final Choices choices;

  LotForms(LotBook book, Lots lots, Tending tending, Choices choices) {
    this.book = book;
    this.lots = lots;
    this.tending = tending;
    this.choices = choices;
  }

  /**
   * @throws NotFound when no lot has this label
   */
  Head lot(String label) {
    return book.head(label).orElseThrow(NotFound.of("lot " + label));
  }

  /**
   * A record of the lot that is being put right.
   *
   * @param under the part of the address that stands for its kind
   * @throws NotFound when the lot has no such record of this kind
   */
  Happened earlier(Head lot, String under, UUID id) {
    return book.happened(lot.lotId()).stream()
        .filter(it -> it.id().equals(id) && under.equals(it.correctedUnder()))
        .findFirst()
        .orElseThrow(NotFound.of("such record"));
  }

  /**
   * @param earlier the record that this form takes the place of, if it does
   */
  String page(String template, Head lot, @Nullable Happened earlier, Model model) {
    model.addAttribute("earlier", earlier);
    return page(template, lot, model);
  }

  String page(String template, Head lot, Model model) {
    model.addAttribute("lot", lot);
    model.addAttribute("ledger", lots.ledger(lot.lotId(), choices.today()));
    model.addAttribute("people", choices.people());
    return template;
  }

  /** Keeps what was done to the lot, in the place of an earlier record where there is one. */
  void keep(
      Head lot,
      NewCare care,
      @Nullable UUID earlier,
      @Nullable String reason,
      @Nullable Checked checked) {
    if (earlier == null) {
      tending.care(lot.lotId(), care, checked);
    } else {
      tending.correctCare(earlier, care, Boxes.text(reason), checked);
    }
  }

  static String backTo(String label, String status, RedirectAttributes next) {
    next.addFlashAttribute("status", status);
    next.addAttribute("label", label);
    return "redirect:/containers/{label}";
  }
}
