package trialwood.propagation.web;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.RequestMapping;
import trialwood.propagation.PlanLists;
import trialwood.propagation.TraySheet;
import trialwood.site.Bench;
import trialwood.web.Entry;

/** Setting a tray on another place by hand; where it stood before stays on record. */
@Controller
@RequestMapping("/bench/trays/{label}/place")
class TrayPlacePages extends TrayFormPages<TrayPlacePages.PlaceForm> {

  private final TrayDesk desk;
  private final PlanLists lists;

  TrayPlacePages(TrayDesk desk, PlanLists lists) {
    super(desk, "place");
    this.desk = desk;
    this.lists = lists;
  }

  record PlaceForm(
      @Nullable UUID formKey,
      @Nullable String bench,
      @Nullable String place,
      @Nullable String on,
      @Nullable String reason,
      @Nullable String by)
      implements TrayForm {

    @Override
    public @Nullable UUID record(TrayDesk desk, UUID tray) {
      Entry entry = new Entry();
      Optional<Bench> to = desk.benches().findByCode(bench == null ? "" : bench);
      if (to.isEmpty()) {
        entry.wrong("bench", "Pick the bench it stands on now.");
      }
      int at = entry.count("place", place);
      LocalDate day = entry.day("on", on, desk.today());
      String why = entry.words("reason", reason, "Say why it stands there now.");
      UUID person = entry.person("by", by);
      entry.orRefuse();
      desk.moving().move(tray, to.orElseThrow(), at, day, why, person);
      return null;
    }
  }

  @Override
  PlaceForm fresh(TraySheet sheet, LocalDate today, Optional<UUID> corrects, @Nullable String by) {
    return new PlaceForm(UUID.randomUUID(), null, null, today.toString(), null, by);
  }

  @ModelAttribute("benches")
  List<Bench> benches() {
    return desk.benches().findAllByOrderByCode();
  }

  @ModelAttribute("moves")
  List<PlanLists.Stood> moves(@ModelAttribute("sheet") TraySheet sheet) {
    return lists.moves(sheet.line().trayId());
  }
}
