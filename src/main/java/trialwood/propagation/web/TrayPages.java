package trialwood.propagation.web;

import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import trialwood.propagation.TraySheets;
import trialwood.web.ForStaff;
import trialwood.web.NotFound;

/** One tray and everything that is written about it. */
@Controller
class TrayPages {

  private final TraySheets sheets;

  TrayPages(TraySheets sheets) {
    this.sheets = sheets;
  }

  @GetMapping("/bench/trays/{label}")
  @ForStaff
  String tray(@PathVariable String label, Model model) {
    model.addAttribute("sheet", sheets.of(label).orElseThrow(NotFound.of("tray " + label)));
    return "bench/tray";
  }
}
