package trialwood.propagation.web;

import java.time.Clock;
import java.time.LocalDate;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import trialwood.propagation.PassageList;
import trialwood.propagation.TraySheet;
import trialwood.propagation.TraySheets;
import trialwood.propagation.TrayWork;
import trialwood.web.ForStaff;
import trialwood.web.NotFound;

/** One tray and everything that is written about it. */
@Controller
class TrayPages {

  private final TraySheets sheets;
  private final TrayWork work;
  private final PassageList passages;
  private final Clock clock;

  TrayPages(TraySheets sheets, TrayWork work, PassageList passages, Clock clock) {
    this.sheets = sheets;
    this.work = work;
    this.passages = passages;
    this.clock = clock;
  }

  @GetMapping("/bench/trays/{label}")
  @ForStaff
  String tray(@PathVariable String label, Model model) {
    TraySheet sheet = sheets.of(label).orElseThrow(NotFound.of("tray " + label));
    model.addAttribute("sheet", sheet);
    model.addAttribute("due", work.due(sheet.line().tray(), LocalDate.now(clock)).orElse(null));
    model.addAttribute("passages", passages.of(sheet.line().trayId()));
    return "bench/tray";
  }
}
