package trialwood.correction;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import trialwood.unit.Unit;
import trialwood.unit.UnitKind;
import trialwood.unit.Units;
import trialwood.web.ForStaff;
import trialwood.web.NotFound;

/** A label: whose plants it stands for, and everything that was said about that. */
@Controller
class UnitPage {

  /** Where the page of a kind of unit begins. */
  private static final Map<UnitKind, String> HOMES =
      Map.of(UnitKind.TRAY, "/bench/trays/", UnitKind.LOT, "/containers/");

  /** Earlier than any record. */
  private static final LocalDate EVER = LocalDate.of(1, 1, 1);

  private final Units units;
  private final Periods periods;
  private final Sayings sayings;
  private final Records records;

  UnitPage(Units units, Periods periods, Sayings sayings, Records records) {
    this.units = units;
    this.periods = periods;
    this.sayings = sayings;
    this.records = records;
  }

  @GetMapping("/units/{label}")
  @ForStaff
  String show(@PathVariable String label, Model page) {
    Unit unit = units.labelled(label).orElseThrow(NotFound.of("label " + label));
    UUID id = Objects.requireNonNull(unit.id());
    List<Period> held = periods.of(List.of(id)).getOrDefault(id, List.of());
    page.addAttribute("unit", unit);
    page.addAttribute("kind", unit.kind().name().toLowerCase(Locale.ROOT));
    page.addAttribute("home", HOMES.getOrDefault(unit.kind(), ""));
    page.addAttribute("whose", held.isEmpty() ? "" : Period.words(held));
    page.addAttribute("said", sayings.of(id));
    page.addAttribute("asked", sayings.about(id));
    page.addAttribute("records", records.on(List.of(id), EVER, Period.OPEN));
    return "correction/unit";
  }
}
