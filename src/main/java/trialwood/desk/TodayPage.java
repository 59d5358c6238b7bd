package trialwood.desk;

import java.time.Clock;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import trialwood.evidence.DueWork;
import trialwood.evidence.WorkSource;
import trialwood.people.Role;
import trialwood.people.SignedIn;
import trialwood.web.ForSignedIn;
import trialwood.web.Place;

/** The first page: what is due, by place, overdue first. */
@Controller
class TodayPage {

  private final List<WorkSource> sources;
  private final LivingUnits living;
  private final Clock clock;

  TodayPage(List<WorkSource> sources, LivingUnits living, Clock clock) {
    this.sources = sources;
    this.living = living;
    this.clock = clock;
  }

  @GetMapping("/")
  @ForSignedIn
  @Place(key = "today", label = "Today", order = 10)
  String today(@AuthenticationPrincipal SignedIn account, Model model) {
    if (account.role() == Role.COOPERATOR) {
      return "redirect:/trials";
    }
    LocalDate today = LocalDate.now(clock);
    Map<String, List<DueWork>> byPlace =
        sources.stream()
            .flatMap(source -> source.due(today).stream())
            .sorted(Comparator.comparing(DueWork::due))
            .collect(Collectors.groupingBy(DueWork::place, TreeMap::new, Collectors.toList()));
    model.addAttribute("today", today);
    model.addAttribute("work", byPlace);
    model.addAttribute("doubts", living.doubts());
    return "desk/today";
  }
}
