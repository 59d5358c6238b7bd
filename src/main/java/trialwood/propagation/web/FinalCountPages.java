package trialwood.propagation.web;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.RequestMapping;
import trialwood.propagation.NewFinalCount;
import trialwood.propagation.TraySheet;
import trialwood.web.Entry;
import trialwood.web.Questions;

/** The count that closes a tray, or takes the place of the one that did. */
@Controller
@RequestMapping("/bench/trays/{label}/final-count")
class FinalCountPages extends TrayFormPages<FinalCountPages.FinalCountForm> {

  private final TrayDesk desk;

  FinalCountPages(TrayDesk desk) {
    super(desk, "final-count");
    this.desk = desk;
  }

  /**
   * @param settles why this count takes the place of those that stand; not sent by somebody who
   *     opened the form while the tray was not closed yet
   * @param asked questions that stood on the page
   * @param checked why an unusual number is right
   */
  record FinalCountForm(
      @Nullable UUID formKey,
      @Nullable String on,
      @Nullable String rooted,
      @Nullable String aliveWithoutRoots,
      @Nullable String dead,
      @Nullable String takenOut,
      @Nullable String rootScore,
      @Nullable String settles,
      @Nullable String note,
      @Nullable String by,
      @Nullable String asked,
      @Nullable String checked)
      implements TrayForm {

    @Override
    public @Nullable UUID record(TrayDesk desk, UUID tray) {
      Entry entry = new Entry();
      NewFinalCount count =
          new NewFinalCount(
              entry.day("on", on, desk.today()),
              entry.count("rooted", rooted),
              entry.count("aliveWithoutRoots", aliveWithoutRoots),
              entry.count("dead", dead),
              entry.count("takenOut", takenOut),
              entry.countIfAny("rootScore", rootScore),
              Entry.wordsIfAny(note),
              settles);
      UUID person = entry.person("by", by);
      entry.orRefuse();
      return desk.closing().finalCount(tray, count, person, new Questions(asked, checked)).id();
    }
  }

  @Override
  FinalCountForm fresh(
      TraySheet sheet, LocalDate today, Optional<UUID> corrects, @Nullable String by) {
    return new FinalCountForm(
        UUID.randomUUID(),
        today.toString(),
        "",
        "",
        "",
        String.valueOf(sheet.taken().number()),
        null,
        sheet.standing().isEmpty() ? null : "",
        "",
        by,
        null,
        null);
  }

  @ModelAttribute("scores")
  Map<Integer, String> scores(@ModelAttribute("sheet") TraySheet sheet) {
    return desk.scale().of(sheet.line().run());
  }
}
