package trialwood.desk;

import java.time.Clock;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ResponseEntity;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import trialwood.evidence.WorkKind;
import trialwood.evidence.WorkState;
import trialwood.people.Role;
import trialwood.people.SignedIn;
import trialwood.season.Task;
import trialwood.season.WorkFilter;
import trialwood.season.WorkList;
import trialwood.season.WorkLists;
import trialwood.web.CsvRows;
import trialwood.web.ForSignedIn;
import trialwood.web.ForStaff;
import trialwood.web.Place;

/** The first page: what is due, by place, overdue first; as a page, on paper and as a file. */
@Controller
class TodayPage {

  private static final List<String> HEAD =
      List.of(
          "place", "kind", "for", "state", "from", "due", "what", "why", "blocked_by", "progress");

  private final WorkLists lists;
  private final LivingUnits living;
  private final Clock clock;

  TodayPage(WorkLists lists, LivingUnits living, Clock clock) {
    this.lists = lists;
    this.living = living;
    this.clock = clock;
  }

  @GetMapping("/")
  @ForSignedIn
  @Place(key = "today", label = "Today", order = 10)
  String today(
      @RequestParam Map<String, String> parameters,
      @AuthenticationPrincipal SignedIn account,
      Model model) {
    if (account.role() == Role.COOPERATOR) {
      return "redirect:/trials";
    }
    show(parameters, account, model, filter -> filter);
    model.addAttribute("doubts", living.doubts());
    return "desk/today";
  }

  @GetMapping("/today/worksheet")
  @ForStaff
  String worksheet(
      @RequestParam Map<String, String> parameters,
      @AuthenticationPrincipal SignedIn account,
      Model model) {
    show(parameters, account, model, WorkFilter::forTheDay);
    return "desk/worksheet";
  }

  @GetMapping(path = "/today.csv", produces = "text/csv;charset=UTF-8")
  @ForStaff
  ResponseEntity<String> csv(
      @RequestParam Map<String, String> parameters, @AuthenticationPrincipal SignedIn account) {
    WorkFilter filter = WorkFilter.of(parameters, account.role());
    LocalDate today = LocalDate.now(clock);
    List<List<@Nullable Object>> rows =
        lists.on(today, filter.days(), account.role()).only(filter).tasks().stream()
            .map(TodayPage::cells)
            .toList();
    return ResponseEntity.ok()
        .header("Content-Disposition", "attachment; filename=\"work-%s.csv\"".formatted(today))
        .body(CsvRows.of(HEAD, rows));
  }

  private void show(
      Map<String, String> parameters,
      SignedIn account,
      Model model,
      Function<WorkFilter, Predicate<Task>> part) {
    WorkFilter filter = WorkFilter.of(parameters, account.role());
    LocalDate today = LocalDate.now(clock);
    WorkList all = lists.on(today, filter.days(), account.role());
    model.addAttribute("today", today);
    model.addAttribute("filter", filter);
    model.addAttribute("query", filter.query());
    model.addAttribute("states", tally(all.only(filter::isAt)));
    model.addAttribute("list", all.only(part.apply(filter)));
    model.addAttribute("places", same(all.placeNames()));
    model.addAttribute("kinds", kinds(all));
    model.addAttribute("roles", roles());
  }

  /** How many there are in each state that occurs. */
  private static Map<WorkState, Long> tally(WorkList list) {
    Map<WorkState, Long> states = new LinkedHashMap<>();
    for (WorkState state : WorkState.values()) {
      if (list.count(state) > 0) {
        states.put(state, list.count(state));
      }
    }
    return states;
  }

  private static Map<String, String> same(List<String> words) {
    Map<String, String> options = new LinkedHashMap<>();
    words.forEach(word -> options.put(word, word));
    return options;
  }

  private static Map<String, String> kinds(WorkList list) {
    Map<String, String> options = new LinkedHashMap<>();
    for (WorkKind kind : list.kinds()) {
      options.put(kind.key(), kind.label());
    }
    return options;
  }

  private static Map<String, String> roles() {
    Map<String, String> options = new LinkedHashMap<>();
    options.put(WorkFilter.EVERYONE, "everyone");
    for (Role role : List.of(Role.BENCH, Role.BREEDER, Role.DOSSIER)) {
      options.put(role.word(), role.word());
    }
    return options;
  }

  private static List<@Nullable Object> cells(Task task) {
    return Arrays.asList(
        task.work().place(),
        task.work().kind().label(),
        task.work().kind().who().word(),
        task.state().word(),
        task.work().from(),
        task.work().due(),
        task.work().what(),
        task.work().why(),
        task.work().blockedBy(),
        task.progress());
  }
}
