package trialwood.arithmetic;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BinaryOperator;
import java.util.stream.Collectors;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import trialwood.record.Problem;
import trialwood.record.Refused;
import trialwood.web.ForStaff;
import trialwood.web.NotFound;
import trialwood.web.Place;

/** The sums: all of them on one page, and each on a page of its own. */
@Controller
@ForStaff
class ArithmeticPages {

  private static final BinaryOperator<String> FIRST = (first, other) -> first;

  private final List<Sum> sums;

  ArithmeticPages(List<Sum> sums) {
    this.sums = sums;
  }

  @GetMapping("/arithmetic")
  @Place(key = "arithmetic", label = "Arithmetic", order = 82)
  String all(Model page) {
    page.addAttribute("sums", sums);
    return "arithmetic/arithmetic";
  }

  @GetMapping("/arithmetic/{key}")
  String one(@PathVariable String key, @RequestParam Map<String, String> parameters, Model page) {
    Sum sum =
        sums.stream()
            .filter(one -> one.key().equals(key))
            .findFirst()
            .orElseThrow(NotFound.of("such sum"));
    boolean asked = sum.boxes().stream().anyMatch(box -> parameters.containsKey(box.name()));
    page.addAttribute("sum", sum);
    page.addAttribute("typed", typed(sum, parameters, asked));
    page.addAttribute("problems", Map.of());
    if (asked) {
      try {
        page.addAttribute("result", sum.work(new Typing(parameters)));
      } catch (Refused refused) {
        page.addAttribute("problems", byBox(refused));
      }
    }
    return "arithmetic/sum";
  }

  /** What the boxes hold: what was typed, or at first what is usual. */
  private static Map<String, String> typed(Sum sum, Map<String, String> sent, boolean asked) {
    Map<String, String> typed = new LinkedHashMap<>();
    for (Box box : sum.boxes()) {
      boolean blank = box.isChoice() && !sent.containsKey(box.name());
      typed.put(box.name(), asked && !blank ? sent.getOrDefault(box.name(), "") : box.usual());
    }
    return typed;
  }

  private static Map<String, String> byBox(Refused refused) {
    return refused.problems().stream()
        .collect(Collectors.toMap(Problem::field, Problem::sentence, FIRST, LinkedHashMap::new));
  }
}
