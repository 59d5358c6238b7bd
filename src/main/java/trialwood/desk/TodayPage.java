package trialwood.desk;

import java.time.Clock;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.simple.JdbcClient;
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
  private final JdbcClient jdbc;
  private final Clock clock;

  TodayPage(List<WorkSource> sources, LivingUnits living, JdbcClient jdbc, Clock clock) {
    this.sources = sources;
    this.living = living;
    this.jdbc = jdbc;
    this.clock = clock;
  }

  /** A candidate whose hold has run out. */
  record Held(String code, String stage, LocalDate holdUntil) {}

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
    model.addAttribute("held", held(today));
    return "desk/today";
  }

  private List<Held> held(LocalDate today) {
    return jdbc.sql(
            """
            select a.code, c.stage, c.hold_until
            from candidate c join accession a on a.id = c.accession_id
            where c.standing = 'ON_HOLD' and c.hold_until <= :today
            order by c.hold_until
            """)
        .param("today", today)
        .query(Held.class)
        .list();
  }
}
