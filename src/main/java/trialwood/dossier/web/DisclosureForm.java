package trialwood.dossier.web;

import jakarta.validation.constraints.Size;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import trialwood.dossier.Disclosure;
import trialwood.record.Recorder;
import trialwood.web.Entry;
import trialwood.web.Form;

/** A disclosure as it is typed; the last two boxes are only on the page that corrects one. */
record DisclosureForm(
    @Nullable UUID formKey,
    @Nullable String on,
    @Nullable String kind,
    @Nullable @Size(max = 40, message = "At most 40 letters.") String territory,
    @Nullable String number,
    @Nullable @Size(max = 80, message = "At most 80 letters.") String agreement,
    @Nullable @Size(max = 120, message = "At most 120 letters.") String toWhom,
    @Nullable String learnedOn,
    @Nullable @Size(max = 300, message = "At most 300 letters.") String note,
    @Nullable String by,
    @Nullable @Size(max = 300, message = "At most 300 letters.") String supersedeReason,
    @Nullable Boolean struckOut)
    implements Form {

  static DisclosureForm fresh() {
    return new DisclosureForm(UUID.randomUUID(), "", "", "", "", "", "", "", "", "", "", false);
  }

  /** Filled with what is on record, but for who logs the correction and why. */
  static DisclosureForm of(Disclosure it) {
    return new DisclosureForm(
        UUID.randomUUID(),
        it.onDate().toString(),
        it.kind().name(),
        it.territory(),
        Objects.toString(it.number(), ""),
        it.agreement(),
        it.toWhom(),
        Objects.toString(it.learnedOn(), ""),
        it.note(),
        "",
        "",
        false);
  }

  Disclosure read(UUID accession, LocalDate today, Recorder recorder) {
    return read(new Entry(), accession, today, recorder);
  }

  /** What takes the place of the earlier record. */
  Disclosure correct(Disclosure earlier, LocalDate today, Recorder recorder) {
    Entry entry = new Entry();
    String reason = entry.words("supersedeReason", supersedeReason, "Say what was wrong.");
    if (Boolean.TRUE.equals(struckOut)) {
      UUID person = entry.person("by", by);
      entry.orRefuse();
      return earlier.struckOut(reason, recorder.by(person));
    }
    return read(entry, earlier.accessionId(), today, recorder).insteadOf(earlier, reason);
  }

  private Disclosure read(Entry entry, UUID accession, LocalDate today, Recorder recorder) {
    LocalDate day = entry.day("on", on, today);
    LocalDate learned =
        Entry.wordsIfAny(learnedOn) == null ? null : entry.day("learnedOn", learnedOn, today);
    if (day.isAfter(today)) {
      entry.wrong("on", "This day has not come yet.");
    }
    if (learned != null && learned.isAfter(today)) {
      entry.wrong("learnedOn", "This day has not come yet.");
    }
    Disclosure.Kind what =
        Arrays.stream(Disclosure.Kind.values())
            .filter(one -> one.name().equals(kind))
            .findFirst()
            .orElse(null);
    if (what == null) {
      entry.wrong("kind", "Choose what was done.");
    }
    String where = entry.words("territory", territory, "Say where it happened, for example US.");
    Integer plants = entry.countIfAny("number", number);
    UUID person = entry.person("by", by);
    entry.orRefuse();
    return new Disclosure(
        accession,
        day,
        Objects.requireNonNull(what),
        where,
        plants,
        Entry.wordsIfAny(agreement),
        Entry.wordsIfAny(toWhom),
        learned,
        Entry.wordsIfAny(note),
        recorder.by(person));
  }
}
