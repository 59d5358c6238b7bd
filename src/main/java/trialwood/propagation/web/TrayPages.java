package trialwood.propagation.web;

import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import trialwood.propagation.PassageList;
import trialwood.propagation.TraySheet;
import trialwood.propagation.TraySheets;
import trialwood.web.ForStaff;
import trialwood.web.NotFound;

/** One tray and everything that is written about it. */
@Controller
class TrayPages {

  private final TraySheets sheets;
  private final PassageList passages;

  TrayPages(TraySheets sheets, PassageList passages) {
    this.sheets = sheets;
    this.passages = passages;
  }

  @GetMapping("/bench/trays/{label}")
  @ForStaff
  String tray(@PathVariable String label, Model model) {
    TraySheet sheet = sheets.of(label).orElseThrow(NotFound.of("tray " + label));
    model.addAttribute("sheet", sheet);
    model.addAttribute("passages", passages.of(sheet.line().trayId()));
    return "bench/tray";
  }
}
