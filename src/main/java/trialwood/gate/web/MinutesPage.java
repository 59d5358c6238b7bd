package trialwood.gate.web;

import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import trialwood.candidate.Stage;
import trialwood.web.ForStaff;
import trialwood.web.Typed;

/** What was decided at a gate, to print and file. */
@Controller
@ForStaff
class MinutesPage {

  private final Minutes minutes;
  private final Clock clock;

  MinutesPage(Minutes minutes, Clock clock) {
    this.minutes = minutes;
    this.clock = clock;
  }

  /** Of this year, unless the address names other days. */
  @GetMapping("/gates/{gate}/minutes")
  String show(
      @PathVariable String gate,
      @RequestParam(required = false) @Nullable String from,
      @RequestParam(required = false) @Nullable String until,
      Model page) {
    Stage stage = Gates.named(gate);
    LocalDate today = LocalDate.now(clock);
    LocalDate first = day(from, today).orElse(today.withDayOfYear(1));
    LocalDate last = day(until, today).orElse(today);
    page.addAttribute("gate", stage);
    page.addAttribute("heading", Gates.title(stage));
    page.addAttribute("from", first);
    page.addAttribute("until", last);
    page.addAttribute("entries", minutes.of(stage, first, last));
    return "gate/minutes";
  }

  private static Optional<LocalDate> day(@Nullable String typed, LocalDate today) {
    return Typed.date(typed == null ? "" : typed, today);
  }
}
