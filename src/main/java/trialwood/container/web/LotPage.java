package trialwood.container.web;

import java.time.Clock;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import trialwood.container.Lots;
import trialwood.container.web.LotBook.CheckLot;
import trialwood.container.web.LotBook.Head;
import trialwood.crop.Trait;
import trialwood.crop.Traits;
import trialwood.unit.Doubts;
import trialwood.web.ForStaff;
import trialwood.web.NotFound;
import trialwood.web.RecordsUsed;

/**
 * One lot: its ledger, what happened to it, its plants and their growth, and the check beside it.
 */
@Controller
class LotPage {

  private final LotBook book;
  private final PlantBook plants;
  private final Lots lots;
  private final Traits traits;
  private final Doubts doubts;
  private final Clock clock;

  LotPage(LotBook book, PlantBook plants, Lots lots, Traits traits, Doubts doubts, Clock clock) {
    this.book = book;
    this.plants = plants;
    this.lots = lots;
    this.traits = traits;
    this.doubts = doubts;
    this.clock = clock;
  }

  @GetMapping("/containers/{label}")
  @ForStaff
  String show(@PathVariable String label, Model model) {
    Head lot = book.head(label).orElseThrow(NotFound.of("lot " + label));
    LocalDate today = LocalDate.now(clock);
    List<CheckLot> checks = book.checksBeside(lot);
    Map<UUID, String> compared = new LinkedHashMap<>();
    compared.put(lot.lotId(), lot.label());
    checks.forEach(check -> compared.put(check.lotId(), check.label()));
    List<Trait> measurable = traits.findByCropIdOrderByCode(lot.cropId());
    model.addAttribute("lot", lot);
    model.addAttribute("ledger", lots.ledger(lot.lotId(), today));
    model.addAttribute("sources", book.sources(lot.lotId()));
    model.addAttribute("happened", book.happened(lot.lotId()));
    model.addAttribute("doubts", doubts.findByUnitIdOrderByOnDate(lot.lotId()));
    model.addAttribute("checks", checks);
    model.addAttribute(
        "lotsUsed",
        RecordsUsed.of(compared.values(), it -> "/containers/" + it, it -> "plants of lot " + it));
    model.addAttribute(
        "plants",
        PlantTable.of(
            lot.lotId(),
            plants.plants(lot.lotId(), today),
            plants.values(compared.keySet()),
            measurable));
    model.addAttribute(
        "growth", GrowthTable.of(compared, plants.measured(compared.keySet()), measurable));
    return "container/lot";
  }
}
