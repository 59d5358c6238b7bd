package trialwood.desk;

import jakarta.servlet.http.HttpServletResponse;
import java.nio.charset.StandardCharsets;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.util.UriUtils;
import trialwood.record.Refused;
import trialwood.unit.ShortCode;
import trialwood.unit.Units;
import trialwood.web.ForStaff;

/** From a label to the page of what bears it: by its square, or by the code typed from it. */
@Controller
@ForStaff
class ScanPages {

  private final Signpost signpost;
  private final Units units;

  ScanPages(Signpost signpost, Units units) {
    this.signpost = signpost;
    this.units = units;
  }

  /** What a square leads to; in capitals where the square says a whole address. */
  @GetMapping({"/s/{code}", "/S/{code}"})
  String open(@PathVariable String code, Model page, HttpServletResponse answer) {
    String next = lead(code, page);
    if (!next.startsWith("redirect:")) {
      answer.setStatus(HttpStatus.NOT_FOUND.value());
    }
    return next;
  }

  @GetMapping("/scan")
  String scan(@RequestParam(defaultValue = "") String code, Model page) {
    if (code.isBlank()) {
      return "desk/scan";
    }
    // a label may bear a square of the nursery's own, that says the label itself
    return units.labelled(code).isPresent()
        ? "redirect:/find?q=" + UriUtils.encode(code, StandardCharsets.UTF_8)
        : lead(code, page);
  }

  private String lead(String typed, Model page) {
    page.addAttribute("typed", typed);
    try {
      ShortCode code = ShortCode.read(typed);
      return signpost
          .to(code)
          .map(href -> "redirect:" + href)
          .orElseGet(
              () -> {
                page.addAttribute(
                    "wrong", "No label of ours bears %s. Is it from here?".formatted(code));
                return "desk/scan";
              });
    } catch (Refused refused) {
      page.addAttribute("wrong", refused.getMessage());
      return "desk/scan";
    }
  }
}
