package trialwood.propagation;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import trialwood.record.Problem;
import trialwood.web.Measures;

/** What is unusual about a count of a tray, so that whoever typed it is asked first. */
@Component
class TrayQuestions {

  /** Looks come at most this many days apart, as long as cuttings are young. */
  private static final int LOOK_GAP = 7;

  private static final int YOUNG = 28;

  /** A final count outside of these days after sticking is early or late. */
  private static final int EARLY = 14;

  private static final int LATE = 90;

  private static final int SPREAD_PERCENT = 30;

  private final JdbcClient jdbc;
  private final TrayPassages passages;

  TrayQuestions(JdbcClient jdbc, TrayPassages passages) {
    this.jdbc = jdbc;
    this.passages = passages;
  }

  /** How many more cuttings came into a tray than went out of it between two days; 0 if fewer. */
  private int came(UUID trayId, LocalDate after, LocalDate until) {
    return Math.max(0, passages.changed(trayId, until) - passages.changed(trayId, after));
  }

  /** Another tray of the batch; rooted is null while it is open. */
  private record Sister(@Nullable Integer rooted, int held) {

    double percent() {
      return rooted == null ? 0 : 100.0 * rooted / held;
    }
  }

  /**
   * @param others the looks that stand beside this one, by their days
   */
  List<Problem> about(Tray tray, TrayLook look, List<TrayLook> others) {
    Optional<TrayLook> last = lookBefore(look.onDate(), others);
    LocalDate seen = last.map(TrayLook::onDate).orElse(tray.stuckOn());
    long unseen = look.onDate().toEpochDay() - seen.toEpochDay();
    int fifth = (tray.stuck() + 4) / 5;
    List<Problem> questions = new ArrayList<>();
    unless(
        questions,
        look.lifted() <= fifth,
        "lifted",
        "%d of %d lifted is more than a fifth, and lifting tears roots. Were that many lifted?"
            .formatted(look.lifted(), tray.stuck()));
    unless(
        questions,
        look.supersedesId() != null || unseen <= LOOK_GAP || tray.dayOf(look.onDate()) > YOUNG,
        "on",
        "Nobody looked for %d days. Was a look taken and not written down?".formatted(unseen));
    moreAlive(look, last).ifPresent(question -> unless(questions, false, "alive", question));
    return questions;
  }

  /** More alive than at the look before: the one contradiction that a file is asked about too. */
  Optional<String> moreAlive(TrayLook look, List<TrayLook> others) {
    return moreAlive(look, lookBefore(look.onDate(), others));
  }

  private Optional<String> moreAlive(TrayLook look, Optional<TrayLook> last) {
    return last.filter(
            it -> look.alive() > it.alive() + came(look.trayId(), it.onDate(), look.onDate()))
        .map(
            it ->
                "%d alive, but %d on %s. Is this the same tray?"
                    .formatted(look.alive(), it.alive(), Measures.day(it.onDate())));
  }

  /**
   * @param looks those that stand, by their days
   */
  List<Problem> about(Tray tray, FinalCount count, List<TrayLook> looks) {
    int day = tray.dayOf(count.onDate());
    List<Problem> questions = new ArrayList<>();
    unless(
        questions,
        day >= EARLY && day <= LATE,
        "on",
        "Day %d after sticking is %s for a final count. Is it one?"
            .formatted(day, day < EARLY ? "early" : "late"));
    moreAlive(count, looks).ifPresent(question -> unless(questions, false, "rooted", question));
    askOfSisters(tray, count, questions);
    return questions;
  }

  Optional<String> moreAlive(FinalCount count, List<TrayLook> looks) {
    int alive = count.rooted() + count.aliveWithoutRoots();
    return lookBefore(count.onDate(), looks)
        .filter(last -> alive > last.alive() + came(count.trayId(), last.onDate(), count.onDate()))
        .map(
            last ->
                "%d alive at the final count, but %d on %s. Is this the same tray?"
                    .formatted(alive, last.alive(), Measures.day(last.onDate())));
  }

  private void askOfSisters(Tray tray, FinalCount count, List<Problem> questions) {
    List<Sister> sisters = sisters(tray);
    List<Sister> counted = new ArrayList<>(sisters);
    counted.removeIf(sister -> sister.rooted() == null);
    counted.add(new Sister(count.rootedOfStuck(), count.held()));
    double most = counted.stream().mapToDouble(Sister::percent).max().orElseThrow();
    double least = counted.stream().mapToDouble(Sister::percent).min().orElseThrow();
    boolean all = counted.size() > sisters.size();
    unless(
        questions,
        !all || least < 100,
        "rooted",
        "Every cutting of the batch rooted. Was each of them looked at?");
    unless(
        questions,
        !all || most > 0,
        "rooted",
        "Not one cutting of the batch rooted. Was each of them looked at?");
    unless(
        questions,
        most - least <= SPREAD_PERCENT,
        "rooted",
        "The trays of the batch rooted %.0f to %.0f %%. Is this the same batch, and did the bench treat them alike?"
            .formatted(least, most));
  }

  private List<Sister> sisters(Tray tray) {
    return jdbc.sql(
            """
            select max(f.rooted + f.taken_out_rooted) as rooted,
                   coalesce(max(f.rooted + f.alive_without_roots + f.dead + f.taken_out), t.stuck) as held
            from tray t
            left join final_count f on f.tray_id = t.unit_id
              and not exists (select 1 from superseded_count s where s.count_id = f.id)
            where t.batch_id = :batch and t.unit_id <> :tray
              and coalesce((select r.counts from tray_ruling r where r.tray_id = t.unit_id
                            order by r.on_date desc, r.recorded_at desc, r.id desc
                            fetch first 1 rows only), true)
            group by t.unit_id, t.stuck
            """)
        .param("batch", tray.batchId())
        .param("tray", tray.unitId())
        .query(Sister.class)
        .list();
  }

  /**
   * @param others the weaning counts that stand beside this one
   */
  List<Problem> about(FinalCount count, Weaning weaning, List<Weaning> others) {
    List<Problem> questions = new ArrayList<>();
    unless(
        questions,
        !weaning.lastMist().isBefore(count.onDate()),
        "lastMist",
        "The final count was taken later, on %s. Did the mist end before it?"
            .formatted(Measures.day(count.onDate())));
    moreAlive(weaning, others).ifPresent(question -> unless(questions, false, "alive", question));
    return questions;
  }

  Optional<String> moreAlive(Weaning weaning, List<Weaning> others) {
    return others.stream()
        .filter(last -> last.onDate().isBefore(weaning.onDate()))
        .filter(last -> weaning.alive() > last.alive())
        .findFirst()
        .map(
            last ->
                "%d alive off the mist, but %d on %s. Is this the same tray?"
                    .formatted(weaning.alive(), last.alive(), Measures.day(last.onDate())));
  }

  private static Optional<TrayLook> lookBefore(LocalDate on, List<TrayLook> looks) {
    return looks.stream()
        .filter(look -> look.onDate().isBefore(on))
        .reduce((earlier, later) -> later);
  }

  /** Asks about a field unless what it holds is usual. */
  private static void unless(
      List<Problem> questions, boolean usual, String field, String question) {
    if (!usual) {
      questions.add(new Problem(field, question));
    }
  }
}
