package trialwood.evidence;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trialwood.analysis.Belief;
import trialwood.analysis.Interval;

/**
 * What the records say about one metric of one candidate at one moment. A stage builds it with
 * {@link #of} or {@link #noRecord} and the methods that add to it.
 *
 * @param value in {@code unit}; none where there is no record, which is never a zero
 * @param unit of value, interval and belief, as the metric's
 * @param counted the counts behind the value as people read them: {@code 66 of 72, 3 trays}
 * @param n units: cuttings, plants
 * @param replicates trays, plots
 * @param asOf date of the newest record in it; none where there is no record
 * @param method one sentence: how it was computed; where there is no record, why not
 * @param records where it came from
 * @param comparison with which check and how it differs, in words
 * @param remarks the guards that spoke, each a sentence
 * @param discardBarred a guard forbids a discard on this evidence, an advance it does not
 * @param occasions evidence of the independent valid occasions, this one included if it is valid,
 *     newest first; empty where there is no more than this one
 * @param belief about the true value, in {@code unit}; not stored
 */
public record Evidence(
    @Nullable Double value,
    String unit,
    @Nullable String counted,
    @Nullable Interval interval,
    int n,
    int replicates,
    int sites,
    int seasons,
    @Nullable LocalDate asOf,
    String method,
    List<RecordLink> records,
    @Nullable String comparison,
    List<String> remarks,
    boolean discardBarred,
    List<Evidence> occasions,
    @Nullable Belief belief) {

  public Evidence {
    records = List.copyOf(records);
    remarks = List.copyOf(remarks);
    occasions = List.copyOf(occasions);
  }

  /** There is nothing to compute from; {@code reason} says what is lacking. */
  public static Evidence noRecord(String reason) {
    return new Evidence(
        null, "", null, null, 0, 0, 0, 0, null, reason, List.of(), null, List.of(), false,
        List.of(), null);
  }

  /** A value and how it was come by. */
  public static Evidence of(double value, String unit, LocalDate asOf, String method) {
    return new Evidence(
        value, unit, null, null, 0, 0, 0, 0, asOf, method, List.of(), null, List.of(), false,
        List.of(), null);
  }

  public boolean isRecorded() {
    return value != null;
  }

  /** From so many units in so many replicates, as people read it. */
  public Evidence from(int units, int replicates, String counted) {
    return new Evidence(
        value,
        unit,
        counted,
        interval,
        units,
        replicates,
        sites,
        seasons,
        asOf,
        method,
        records,
        comparison,
        remarks,
        discardBarred,
        occasions,
        belief);
  }

  public Evidence over(int sites, int seasons) {
    return new Evidence(
        value,
        unit,
        counted,
        interval,
        n,
        replicates,
        sites,
        seasons,
        asOf,
        method,
        records,
        comparison,
        remarks,
        discardBarred,
        occasions,
        belief);
  }

  /** With what is believed of the true value, and the belief's interval of the given level. */
  public Evidence believing(Belief belief, double level) {
    return new Evidence(
        value,
        unit,
        counted,
        belief.interval(level),
        n,
        replicates,
        sites,
        seasons,
        asOf,
        method,
        records,
        comparison,
        remarks,
        discardBarred,
        occasions,
        belief);
  }

  /** With an interval that no belief stands behind, like the days between two looks. */
  public Evidence within(Interval interval) {
    return new Evidence(
        value,
        unit,
        counted,
        interval,
        n,
        replicates,
        sites,
        seasons,
        asOf,
        method,
        records,
        comparison,
        remarks,
        discardBarred,
        occasions,
        belief);
  }

  public Evidence citing(List<RecordLink> records) {
    return new Evidence(
        value,
        unit,
        counted,
        interval,
        n,
        replicates,
        sites,
        seasons,
        asOf,
        method,
        records,
        comparison,
        remarks,
        discardBarred,
        occasions,
        belief);
  }

  public Evidence comparedWith(String comparison) {
    return new Evidence(
        value,
        unit,
        counted,
        interval,
        n,
        replicates,
        sites,
        seasons,
        asOf,
        method,
        records,
        comparison,
        remarks,
        discardBarred,
        occasions,
        belief);
  }

  /** With one more thing to say about it. */
  public Evidence remarking(String remark) {
    return remarking(remark, discardBarred);
  }

  /** With the reason why nobody can be discarded by it. */
  public Evidence barringDiscard(String remark) {
    return remarking(remark, true);
  }

  public Evidence onOccasions(List<Evidence> occasions) {
    return new Evidence(
        value,
        unit,
        counted,
        interval,
        n,
        replicates,
        sites,
        seasons,
        asOf,
        method,
        records,
        comparison,
        remarks,
        discardBarred,
        occasions,
        belief);
  }

  private Evidence remarking(String remark, boolean barred) {
    List<String> all = new ArrayList<>(remarks);
    all.add(remark);
    return new Evidence(
        value,
        unit,
        counted,
        interval,
        n,
        replicates,
        sites,
        seasons,
        asOf,
        method,
        records,
        comparison,
        all,
        barred,
        occasions,
        belief);
  }
}
