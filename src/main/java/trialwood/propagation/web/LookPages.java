package trialwood.propagation.web;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.RequestMapping;
import trialwood.propagation.NewLook;
import trialwood.propagation.TrayLook;
import trialwood.propagation.TraySheet;
import trialwood.web.Entry;
import trialwood.web.NotFound;
import trialwood.web.Questions;

/** An interim look at a sample, or the correction of one. */
@Controller
@RequestMapping("/bench/trays/{label}/look")
class LookPages extends TrayFormPages<LookPages.LookForm> {

  LookPages(TrayDesk desk) {
    super(desk, "look");
  }

  /**
   * @param corrects the look that this one takes the place of
   * @param asked questions that stood on the page
   * @param checked why an unusual number is right
   */
  record LookForm(
      @Nullable UUID formKey,
      @Nullable String on,
      @Nullable String lifted,
      @Nullable String rooted,
      @Nullable String alive,
      @Nullable String deadRemoved,
      @Nullable String note,
      @Nullable String by,
      @Nullable String corrects,
      @Nullable String supersedeReason,
      @Nullable String asked,
      @Nullable String checked)
      implements TrayForm {

    static LookForm correcting(TrayLook look) {
      return new LookForm(
          UUID.randomUUID(),
          look.onDate().toString(),
          String.valueOf(look.lifted()),
          String.valueOf(look.rooted()),
          String.valueOf(look.alive()),
          String.valueOf(look.deadRemoved()),
          look.note(),
          Objects.toString(look.recorded().personId(), null),
          String.valueOf(look.id()),
          "",
          null,
          null);
    }

    @Override
    public @Nullable UUID record(TrayDesk desk, UUID tray) {
      Entry entry = new Entry();
      NewLook look =
          new NewLook(
              entry.day("on", on, desk.today()),
              entry.count("lifted", lifted),
              entry.count("rooted", rooted),
              entry.count("alive", alive),
              entry.count("deadRemoved", deadRemoved),
              Entry.wordsIfAny(note));
      UUID person = entry.person("by", by);
      Optional<Correction> correction = Correction.read(entry, corrects, supersedeReason);
      entry.orRefuse();
      return correction
          .map(
              it ->
                  desk.records()
                      .correctLook(
                          tray,
                          it.earlier(),
                          look,
                          it.reason(),
                          person,
                          new Questions(asked, checked)))
          .orElseGet(() -> desk.records().look(tray, look, person, new Questions(asked, checked)))
          .id();
    }
  }

  @Override
  LookForm fresh(TraySheet sheet, LocalDate today, Optional<UUID> corrects, @Nullable String by) {
    return corrects
        .map(
            id ->
                sheet.looks().stream()
                    .filter(look -> id.equals(look.id()))
                    .findFirst()
                    .map(LookForm::correcting)
                    .orElseThrow(NotFound.of("such look")))
        .orElseGet(
            () ->
                new LookForm(
                    UUID.randomUUID(),
                    today.toString(),
                    "",
                    "",
                    "",
                    "0",
                    "",
                    by,
                    null,
                    null,
                    null,
                    null));
  }
}
