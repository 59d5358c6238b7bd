package trialwood.propagation.web;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.RequestMapping;
import trialwood.propagation.NewWeaning;
import trialwood.propagation.TraySheet;
import trialwood.propagation.Weaning;
import trialwood.web.Entry;
import trialwood.web.NotFound;
import trialwood.web.Questions;

/** Life off the mist, or the correction of what was said about it. */
@Controller
@RequestMapping("/bench/trays/{label}/weaning")
class WeaningPages extends TrayFormPages<WeaningPages.WeaningForm> {

  private final TrayDesk desk;

  WeaningPages(TrayDesk desk) {
    super(desk, "weaning");
    this.desk = desk;
  }

  /**
   * @param corrects the weaning count that this one takes the place of
   * @param asked questions that stood on the page
   * @param checked why an unusual number is right
   */
  record WeaningForm(
      @Nullable UUID formKey,
      @Nullable String lastMist,
      @Nullable String on,
      @Nullable String alive,
      @Nullable String wilted,
      @Nullable String shock,
      @Nullable String note,
      @Nullable String by,
      @Nullable String corrects,
      @Nullable String supersedeReason,
      @Nullable String asked,
      @Nullable String checked)
      implements TrayForm {

    static WeaningForm correcting(Weaning weaning) {
      return new WeaningForm(
          UUID.randomUUID(),
          weaning.lastMist().toString(),
          weaning.onDate().toString(),
          String.valueOf(weaning.alive()),
          Objects.toString(weaning.wilted(), ""),
          Objects.toString(weaning.shock(), ""),
          weaning.note(),
          Objects.toString(weaning.recorded().personId(), null),
          String.valueOf(weaning.id()),
          "",
          null,
          null);
    }

    @Override
    public @Nullable UUID record(TrayDesk desk, UUID tray) {
      Entry entry = new Entry();
      NewWeaning weaning =
          new NewWeaning(
              entry.day("lastMist", lastMist, desk.today()),
              entry.day("on", on, desk.today()),
              entry.count("alive", alive),
              entry.countIfAny("wilted", wilted),
              entry.countIfAny("shock", shock),
              Entry.wordsIfAny(note));
      UUID person = entry.person("by", by);
      Optional<Correction> correction = Correction.read(entry, corrects, supersedeReason);
      entry.orRefuse();
      return correction
          .map(
              it ->
                  desk.closing()
                      .correctWeaning(
                          tray,
                          it.earlier(),
                          weaning,
                          it.reason(),
                          person,
                          new Questions(asked, checked)))
          .orElseGet(
              () -> desk.closing().weaning(tray, weaning, person, new Questions(asked, checked)))
          .id();
    }
  }

  @Override
  WeaningForm fresh(
      TraySheet sheet, LocalDate today, Optional<UUID> corrects, @Nullable String by) {
    return corrects
        .map(
            id ->
                sheet.weanings().stream()
                    .filter(weaning -> id.equals(weaning.id()))
                    .findFirst()
                    .map(WeaningForm::correcting)
                    .orElseThrow(NotFound.of("such weaning count")))
        .orElseGet(
            () ->
                new WeaningForm(
                    UUID.randomUUID(),
                    Objects.toString(lastMist(sheet), ""),
                    today.toString(),
                    "",
                    "",
                    "",
                    "",
                    by,
                    null,
                    null,
                    null,
                    null));
  }

  /** As noted for the tray, or else for another of its run after this one was counted. */
  private @Nullable LocalDate lastMist(TraySheet sheet) {
    return sheet.lastMist() != null
        ? sheet.lastMist()
        : desk.weanings()
            .lastMistIn(sheet.batch().runId())
            .filter(mist -> sheet.standing().stream().noneMatch(it -> mist.isBefore(it.onDate())))
            .orElse(null);
  }
}
