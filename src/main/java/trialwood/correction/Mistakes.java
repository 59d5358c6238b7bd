package trialwood.correction;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import trialwood.lineage.Accession;
import trialwood.lineage.Accessions;
import trialwood.unit.Unit;
import trialwood.unit.Units;
import trialwood.web.Entry;

/** Reads what was typed about labels. */
@Component
class Mistakes {

  private final Units units;
  private final Accessions accessions;
  private final Clock clock;

  Mistakes(Units units, Accessions accessions, Clock clock) {
    this.units = units;
    this.accessions = accessions;
    this.clock = clock;
  }

  /**
   * @throws trialwood.record.Refused when something cannot be read or is not on record
   */
  Mistake read(CorrectionForm form) {
    LocalDate today = LocalDate.now(clock);
    Entry entry = new Entry();
    List<Unit> these = labelled("labels", form.labels(), entry);
    List<Unit> those = form.isSwap() ? labelled("others", form.others(), entry) : List.of();
    if (those.stream().anyMatch(these::contains)) {
      entry.wrong("others", "A label stands on both sides.");
    }
    UUID accession = form.isSwap() ? null : accession(form.accession(), entry);
    LocalDate from = entry.day("from", form.from(), today);
    if (from.isAfter(today)) {
      entry.wrong("from", "This day is still to come.");
    }
    String end = Entry.wordsIfAny(form.until());
    LocalDate until = end == null ? Period.OPEN : entry.day("until", end, today);
    if (!until.isAfter(from)) {
      entry.wrong("until", "It ends before it begins.");
    }
    entry.orRefuse();
    return new Mistake(these, those, accession, from, until);
  }

  private List<Unit> labelled(String field, @Nullable String typed, Entry entry) {
    List<Unit> found = new ArrayList<>();
    for (String label : entry.words(field, typed, "Scan or type a label.").split("[,;\\r\\n]+")) {
      if (!label.isBlank()) {
        units
            .scanned(label)
            .ifPresentOrElse(
                unit -> {
                  if (!found.contains(unit)) {
                    found.add(unit);
                  }
                },
                () -> entry.wrong(field, "No label %s is on record.".formatted(label.strip())));
      }
    }
    return found;
  }

  private @Nullable UUID accession(@Nullable String typed, Entry entry) {
    String code = entry.words("accession", typed, "Type whose plants they are.");
    if (code.isEmpty()) {
      return null;
    }
    return accessions
        .named(code)
        .map(Accession::id)
        .orElseGet(
            () -> {
              entry.wrong("accession", "No accession %s is on record.".formatted(code));
              return null;
            });
  }
}
