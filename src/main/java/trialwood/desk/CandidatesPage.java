package trialwood.desk;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import trialwood.candidate.Stage;
import trialwood.candidate.Standing;
import trialwood.web.CsvRows;
import trialwood.web.ForStaff;
import trialwood.web.ListQuery;
import trialwood.web.Place;

/** The list of candidates. */
@Controller
class CandidatesPage {

  private static final List<String> HEAD =
      List.of(
          "accession", "talk_name", "seed_parent", "tagged_on", "stage", "standing", "hold_until");

  private final CandidateList candidates;

  CandidatesPage(CandidateList candidates) {
    this.candidates = candidates;
  }

  @GetMapping("/candidates")
  @ForStaff
  @Place(key = "candidates", label = "Candidates", order = 60)
  String list(@RequestParam Map<String, String> parameters, Model model) {
    ListQuery query = query(parameters);
    model.addAttribute("query", query);
    model.addAttribute("rows", candidates.page(query));
    model.addAttribute("total", candidates.count(query));
    model.addAttribute("stages", stages());
    model.addAttribute("standings", standings());
    return "desk/candidates";
  }

  @GetMapping(path = "/candidates.csv", produces = "text/csv;charset=UTF-8")
  @ForStaff
  ResponseEntity<String> csv(@RequestParam Map<String, String> parameters) {
    List<List<@Nullable Object>> rows =
        candidates.page(query(parameters)).stream().map(CandidatesPage::cells).toList();
    return ResponseEntity.ok()
        .header("Content-Disposition", "attachment; filename=\"candidates.csv\"")
        .body(CsvRows.of(HEAD, rows));
  }

  private static List<@Nullable Object> cells(CandidateList.Line line) {
    return Arrays.asList(
        line.code(),
        line.talkName(),
        line.parent(),
        line.taggedOn(),
        line.stage().word(),
        line.standing().word(),
        line.holdUntil());
  }

  private static ListQuery query(Map<String, String> parameters) {
    return ListQuery.of(parameters, "stage", "standing");
  }

  private static Map<String, String> stages() {
    Map<String, String> words = new LinkedHashMap<>();
    for (Stage stage : Stage.values()) {
      words.put(stage.name(), stage.word());
    }
    return words;
  }

  private static Map<String, String> standings() {
    Map<String, String> words = new LinkedHashMap<>();
    for (Standing standing : Standing.values()) {
      words.put(standing.name(), standing.word());
    }
    return words;
  }
}
