package trialwood.desk;

import java.time.Clock;
import java.time.LocalDate;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import trialwood.web.ForStaff;
import trialwood.web.Typed;

/** The benches as a map: what stands where, what is free, what is held to no use. */
@Controller
class BenchMapPage {

  private final BenchMap map;
  private final Clock clock;

  BenchMapPage(BenchMap map, Clock clock) {
    this.map = map;
    this.clock = clock;
  }

  /**
   * @param on the day to look at; today where it is left out or cannot be read
   */
  @GetMapping("/bench/map")
  @ForStaff
  String map(@RequestParam(defaultValue = "today") String on, Model model) {
    LocalDate today = LocalDate.now(clock);
    LocalDate day = Typed.date(on, today).orElse(today);
    model.addAttribute("day", day);
    model.addAttribute("today", today);
    model.addAttribute("shown", map.on(day));
    return "desk/bench-map";
  }
}
