package trialwood.propagation.web;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.RequestMapping;
import trialwood.propagation.NewTakenOut;
import trialwood.propagation.TakenOut;
import trialwood.propagation.TraySheet;
import trialwood.web.Entry;
import trialwood.web.NotFound;

/** Cuttings that leave the tray before its final count. */
@Controller
@RequestMapping("/bench/trays/{label}/taken-out")
class TakenOutPages extends TrayFormPages<TakenOutPages.TakenOutForm> {

  TakenOutPages(TrayDesk desk) {
    super(desk, "taken-out");
  }

  /**
   * @param corrects the record that this one takes the place of
   */
  record TakenOutForm(
      @Nullable UUID formKey,
      @Nullable String on,
      @Nullable String number,
      @Nullable String rooted,
      TakenOut.@Nullable Fate fate,
      @Nullable String note,
      @Nullable String by,
      @Nullable String corrects,
      @Nullable String supersedeReason)
      implements TrayForm {

    static TakenOutForm correcting(TakenOut out) {
      return new TakenOutForm(
          UUID.randomUUID(),
          out.onDate().toString(),
          String.valueOf(out.number()),
          out.isRooted() ? "yes" : "no",
          out.fate(),
          out.note(),
          Objects.toString(out.recorded().personId(), null),
          String.valueOf(out.id()),
          "");
    }

    @Override
    public @Nullable UUID record(TrayDesk desk, UUID tray) {
      Entry entry = new Entry();
      LocalDate day = entry.day("on", on, desk.today());
      int out = entry.count("number", number);
      boolean roots = "yes".equals(entry.words("rooted", rooted, "Say whether they had roots."));
      if (fate == null) {
        entry.wrong("fate", "Say what became of them.");
      }
      UUID person = entry.person("by", by);
      Optional<Correction> correction = Correction.read(entry, corrects, supersedeReason);
      entry.orRefuse();
      NewTakenOut taken =
          new NewTakenOut(day, out, roots, Objects.requireNonNull(fate), Entry.wordsIfAny(note));
      return correction
          .map(it -> desk.records().correctTakenOut(tray, it.earlier(), taken, it.reason(), person))
          .orElseGet(() -> desk.records().takenOut(tray, taken, person))
          .id();
    }
  }

  @Override
  TakenOutForm fresh(
      TraySheet sheet, LocalDate today, Optional<UUID> corrects, @Nullable String by) {
    return corrects
        .map(
            id ->
                sheet.takenOut().stream()
                    .filter(out -> id.equals(out.id()))
                    .findFirst()
                    .map(TakenOutForm::correcting)
                    .orElseThrow(NotFound.of("such record of cuttings taken out")))
        .orElseGet(
            () ->
                new TakenOutForm(
                    UUID.randomUUID(), today.toString(), "", null, null, "", by, null, null));
  }

  @ModelAttribute("rootedOrNot")
  Map<String, String> rootedOrNot() {
    Map<String, String> words = new LinkedHashMap<>();
    words.put("yes", "rooted");
    words.put("no", "no roots");
    return words;
  }

  @ModelAttribute("fates")
  Map<String, String> fates() {
    Map<String, String> words = new LinkedHashMap<>();
    for (TakenOut.Fate fate : TakenOut.Fate.values()) {
      words.put(fate.name(), fate.word());
    }
    return words;
  }
}
