package trialwood.propagation;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import trialwood.crop.LookDays;
import trialwood.propagation.RoundTray.State;

/**
 * A tray on the bench with what its work list is read from.
 *
 * @param lookDays of the crop
 * @param counts final counts that stand
 * @param closedOn day of the final count
 * @param lastMist as noted with the last weaning count
 * @param question an open question about it
 */
record WatchedTray(
    String tray,
    String run,
    @Nullable String bench,
    @Nullable String block,
    @Nullable String place,
    String accession,
    LocalDate stuckOn,
    String lookDays,
    @Nullable LocalDate lastLook,
    int counts,
    @Nullable LocalDate closedOn,
    @Nullable LocalDate lastMist,
    @Nullable LocalDate lastWeaned,
    @Nullable String voidReason,
    @Nullable UUID doubtId,
    @Nullable String question) {

  /** Days after the last mist on which the living are counted. */
  static final List<Integer> WEANING_DAYS = List.of(7, 14);

  /** So long after its count, or void after its sticking, a tray is no longer gone to. */
  static final int DAYS_KEPT = 60;

  /** A tray that waits for its final count is looked at once a week. */
  private static final int WEEK = 7;

  private static final int YOUNG = 28;

  private record Work(BenchTask task, @Nullable LocalDate due, LocalDate from) {}

  RoundTray on(LocalDate today) {
    Work work = closedOn == null ? underMist(today) : offTheMist(closedOn);
    boolean waits =
        work.due != null
            && !work.due.isAfter(today)
            && (voidReason == null || days(stuckOn, today) <= DAYS_KEPT);
    String blockedBy =
        counts > 1 ? "two final counts contradict each other" : waits ? blockedBy() : null;
    int unseen = days(lastLook == null ? stuckOn : lastLook, today);
    return new RoundTray(
        tray,
        run,
        bench,
        block,
        place,
        accession,
        work.task,
        blockedBy != null
            ? State.BLOCKED
            : waits ? waiting(work, unseen, today) : tendedOn(today) ? State.DONE : State.RESTING,
        work.due,
        days(work.from, today),
        unseen,
        blockedBy,
        doubtId);
  }

  private @Nullable String blockedBy() {
    return voidReason != null ? "void: " + voidReason : question;
  }

  private State waiting(Work work, int unseen, LocalDate today) {
    if (work.task != BenchTask.WEANING && unseen > WEEK && days(stuckOn, today) <= YOUNG) {
      return State.MISSED;
    }
    return Objects.requireNonNull(work.due).isBefore(today) ? State.OVERDUE : State.DUE;
  }

  private boolean tendedOn(LocalDate today) {
    return Stream.of(lastLook, closedOn, lastWeaned).anyMatch(today::equals);
  }

  /** The earliest look that was not taken; from the last look day on, the final count. */
  private Work underMist(LocalDate today) {
    LookDays looks = LookDays.of(lookDays);
    LocalDate seen = lastLook == null ? stuckOn : lastLook;
    LocalDate due =
        looks.days().stream()
            .map(stuckOn::plusDays)
            .filter(day -> day.isAfter(seen))
            .findFirst()
            .orElseGet(() -> seen.plusDays(WEEK));
    boolean closing = !stuckOn.plusDays(looks.last()).isAfter(today);
    return new Work(closing ? BenchTask.FINAL_COUNT : BenchTask.LOOK, due, stuckOn);
  }

  /** Counted from the last mist, or until that is noted from the final count. */
  private Work offTheMist(LocalDate closed) {
    LocalDate mist = lastMist == null ? closed : lastMist;
    return new Work(
        BenchTask.WEANING,
        WEANING_DAYS.stream()
            .map(mist::plusDays)
            .filter(day -> lastWeaned == null || day.isAfter(lastWeaned))
            .findFirst()
            .orElse(null),
        mist);
  }

  private static int days(LocalDate from, LocalDate to) {
    return Math.toIntExact(to.toEpochDay() - from.toEpochDay());
  }
}
