package trialwood.dossier.web;

import jakarta.validation.constraints.Size;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import trialwood.dossier.Filing;
import trialwood.dossier.FilingRoute;
import trialwood.record.Recorder;
import trialwood.web.Entry;
import trialwood.web.Form;

/** A filing as it is typed; the last two boxes are only on the page that corrects one. */
record FilingForm(
    @Nullable UUID formKey,
    @Nullable String on,
    @Nullable String route,
    @Nullable @Size(max = 60, message = "At most 60 letters.") String number,
    @Nullable @Size(max = 300, message = "At most 300 letters.") String note,
    @Nullable String by,
    @Nullable @Size(max = 300, message = "At most 300 letters.") String supersedeReason,
    @Nullable Boolean struckOut)
    implements Form {

  static FilingForm fresh() {
    return new FilingForm(UUID.randomUUID(), "", "", "", "", "", "", false);
  }

  /** Filled with what is on record, but for who logs the correction and why. */
  static FilingForm of(Filing it, String route) {
    return new FilingForm(
        UUID.randomUUID(), it.onDate().toString(), route, it.number(), it.note(), "", "", false);
  }

  /**
   * @param chosen the route whose code was picked, if there is one
   */
  Filing read(UUID accession, Optional<FilingRoute> chosen, LocalDate today, Recorder recorder) {
    return read(new Entry(), accession, chosen, today, recorder);
  }

  /** What takes the place of the earlier record. */
  Filing correct(Filing earlier, Optional<FilingRoute> chosen, LocalDate today, Recorder recorder) {
    Entry entry = new Entry();
    String reason = entry.words("supersedeReason", supersedeReason, "Say what was wrong.");
    if (Boolean.TRUE.equals(struckOut)) {
      UUID person = entry.person("by", by);
      entry.orRefuse();
      return earlier.struckOut(reason, recorder.by(person));
    }
    return read(entry, earlier.accessionId(), chosen, today, recorder).insteadOf(earlier, reason);
  }

  private Filing read(
      Entry entry,
      UUID accession,
      Optional<FilingRoute> chosen,
      LocalDate today,
      Recorder recorder) {
    LocalDate day = entry.day("on", on, today);
    if (day.isAfter(today)) {
      entry.wrong("on", "This day has not come yet.");
    }
    if (chosen.isEmpty()) {
      entry.wrong("route", "Choose the route.");
    }
    UUID person = entry.person("by", by);
    entry.orRefuse();
    return new Filing(
        accession,
        chosen.map(FilingRoute::id).orElseThrow(),
        day,
        Entry.wordsIfAny(number),
        Entry.wordsIfAny(note),
        recorder.by(person));
  }
}
