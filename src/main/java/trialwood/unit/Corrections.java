package trialwood.unit;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import trialwood.record.Recorded;
import trialwood.record.Refused;

/** Puts labels right by saying anew whose plants they stood for, and takes that back. */
@Service
public class Corrections {

  private final Identity identity;
  private final Ties ties;
  private final Doubts doubts;
  private final Units units;
  private final Clock clock;

  Corrections(Identity identity, Ties ties, Doubts doubts, Units units, Clock clock) {
    this.identity = identity;
    this.ties = ties;
    this.doubts = doubts;
    this.units = units;
    this.clock = clock;
  }

  /**
   * Says of each unit whose it is in these days. No record is touched.
   *
   * @param until the first day on which it no longer holds; open when absent
   * @param settled questions that this answers
   * @return the mark that all these sayings bear
   */
  @Transactional
  public UUID say(
      List<NewHolder> holders,
      LocalDate from,
      @Nullable LocalDate until,
      String reason,
      @Nullable String evidence,
      Collection<UUID> settled,
      Recorded by) {
    UUID correction = UUID.randomUUID();
    LocalDate today = LocalDate.now(clock);
    if (from.isAfter(today)) {
      throw new Refused("from", "This day is still to come.");
    }
    identity.say(
        holders.stream()
            .map(
                it ->
                    new Tie(it.unitId(), it.accessionId(), from, until, reason, evidence, today, by)
                        .within(correction))
            .toList());
    List<Doubt> open =
        doubts.findAllById(settled).stream().filter(doubt -> doubt.answer() == null).toList();
    open.forEach(doubt -> doubt.settledBy(correction, "The labels were put right.", by));
    doubts.saveAll(open);
    return correction;
  }

  /**
   * Says again what held before a correction, and asks again what it had answered.
   *
   * @return the mark of the sayings that take it back
   * @throws Refused when there is no such correction, or something was said of its units since
   */
  @Transactional
  public UUID takeBack(UUID correction, String reason, Recorded by) {
    List<Tie> said = ties.findByCorrectionIdOrderById(correction);
    if (said.isEmpty()) {
      throw new Refused("reason", "There is no such correction.");
    }
    Map<UUID, List<Tie>> all =
        ties.findByUnitIdIn(Ties.unitsOf(said)).stream()
            .collect(Collectors.groupingBy(Tie::unitId));
    all.values().forEach(sayings -> refuseIfSaidSince(correction, sayings));
    UUID back = UUID.randomUUID();
    LocalDate today = LocalDate.now(clock);
    List<Tie> again = new ArrayList<>();
    for (Tie tie : said) {
      List<Tie> earlier =
          Objects.requireNonNull(all.get(tie.unitId())).stream()
              .filter(it -> !correction.equals(it.correctionId()))
              .toList();
      for (Holding held : Holding.within(tie, earlier)) {
        again.add(
            new Tie(
                    tie.unitId(),
                    held.accessionId(),
                    held.from(),
                    held.until().equals(Holding.OPEN) ? null : held.until(),
                    reason,
                    null,
                    today,
                    by)
                .within(back));
      }
    }
    identity.say(again);
    doubts.saveAll(
        doubts.findByCorrectionIdOrderByOnDate(correction).stream()
            .map(answered -> answered.again(by))
            .toList());
    return back;
  }

  private void refuseIfSaidSince(UUID correction, List<Tie> sayings) {
    long last =
        sayings.stream()
            .filter(tie -> correction.equals(tie.correctionId()))
            .mapToLong(Corrections::number)
            .max()
            .orElseThrow();
    sayings.stream()
        .filter(tie -> number(tie) > last)
        .findFirst()
        .ifPresent(
            later -> {
              throw new Refused(
                  "reason",
                  "Something was said of %s since. Put that right instead."
                      .formatted(units.findById(later.unitId()).orElseThrow().label()));
            });
  }

  private static long number(Tie tie) {
    return Objects.requireNonNull(tie.id());
  }
}
