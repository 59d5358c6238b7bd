package trialwood.evidence;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trialwood.analysis.Belief;
import trialwood.analysis.Interval;

/**
 * What the records say about one metric of one candidate at one moment.
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
 * @param moot the question does not arise, as {@code counted} says; there is no value and it is met
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
    boolean moot,
    @Nullable Belief belief) {

  public Evidence {
    records = List.copyOf(records);
    remarks = List.copyOf(remarks);
    occasions = List.copyOf(occasions);
  }

  /** There is nothing to compute from; {@code reason} says what is lacking. */
  public static Evidence noRecord(String reason) {
    return new EvidenceBuilder(null, "", null, reason).build();
  }

  /** The question does not arise: {@code why} takes the place of a value. */
  public static EvidenceBuilder moot(String why, String unit, LocalDate asOf, String method) {
    return new EvidenceBuilder(null, unit, asOf, method).moot(why);
  }

  /** A value and how it was come by; the builder takes the rest. */
  public static EvidenceBuilder of(double value, String unit, LocalDate asOf, String method) {
    return new EvidenceBuilder(value, unit, asOf, method);
  }

  /** The same, its lines drawn in that unit. */
  public Evidence in(String unit) {
    return with(value, unit, interval, n, replicates, belief);
  }

  /** The same question with other records behind it: what they would say. */
  public Evidence having(double value, int n, int replicates, Belief belief) {
    return with(value, unit, null, n, replicates, belief);
  }

  private Evidence with(
      @Nullable Double value,
      String unit,
      @Nullable Interval interval,
      int n,
      int replicates,
      @Nullable Belief belief) {
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
        moot,
        belief);
  }

  public boolean isRecorded() {
    return value != null;
  }

  /** The same with the evidence of each valid occasion, newest first. */
  public Evidence onOccasions(List<Evidence> each) {
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
        each,
        moot,
        belief);
  }
}
