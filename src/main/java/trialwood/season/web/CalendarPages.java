package trialwood.season.web;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import org.springframework.web.servlet.support.ServletUriComponentsBuilder;
import trialwood.people.Secret;
import trialwood.people.SignedIn;
import trialwood.season.CalendarFeeds;
import trialwood.web.ForStaff;

/** Where an account makes the private address of its calendar, and takes it back. */
@Controller
@ForStaff
class CalendarPages {

  private final CalendarFeeds feeds;

  CalendarPages(CalendarFeeds feeds) {
    this.feeds = feeds;
  }

  @GetMapping("/my-calendar")
  String show(@AuthenticationPrincipal SignedIn account, Model page) {
    @Nullable Instant made = feeds.madeAt(account.getUsername()).orElse(null);
    page.addAttribute("made", made);
    return "season/my-calendar";
  }

  /** The address is shown by the page that follows, once. */
  @PostMapping("/my-calendar")
  String make(@AuthenticationPrincipal SignedIn account, RedirectAttributes next) {
    Secret secret = feeds.make(account.getUsername());
    next.addFlashAttribute(
        "address",
        ServletUriComponentsBuilder.fromCurrentContextPath()
            .pathSegment("calendar", secret.text() + ".ics")
            .toUriString());
    return "redirect:/my-calendar";
  }

  @PostMapping("/my-calendar/revoke")
  String revoke(@AuthenticationPrincipal SignedIn account, RedirectAttributes next) {
    feeds.revoke(account.getUsername());
    next.addFlashAttribute("status", "The address leads nowhere any more.");
    return "redirect:/my-calendar";
  }
}
