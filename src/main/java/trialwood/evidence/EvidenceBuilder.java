package trialwood.evidence;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trialwood.analysis.Belief;
import trialwood.analysis.Interval;

/** Puts evidence together, part by part; what is not said stays empty. */
public final class EvidenceBuilder {

  private final @Nullable Double value;
  private final String unit;
  private final @Nullable LocalDate asOf;
  private final String method;
  private @Nullable String counted;
  private @Nullable Interval interval;
  private int units;
  private int replicates;
  private int sites;
  private int seasons;
  private final List<RecordLink> records = new ArrayList<>();
  private @Nullable String comparison;
  private final List<String> remarks = new ArrayList<>();
  private boolean discardBarred;
  private List<Evidence> occasions = List.of();
  private boolean moot;
  private @Nullable Belief belief;

  EvidenceBuilder(@Nullable Double value, String unit, @Nullable LocalDate asOf, String method) {
    this.value = value;
    this.unit = unit;
    this.asOf = asOf;
    this.method = method;
  }

  /** From so many units in so many replicates, and the same as people read it. */
  public EvidenceBuilder from(int units, int replicates, String counted) {
    this.units = units;
    this.replicates = replicates;
    this.counted = counted;
    return this;
  }

  EvidenceBuilder moot(String why) {
    moot = true;
    counted = why;
    return this;
  }

  public EvidenceBuilder over(int sites, int seasons) {
    this.sites = sites;
    this.seasons = seasons;
    return this;
  }

  /** With what is believed of the true value, in the evidence's unit, and its interval. */
  public EvidenceBuilder believing(Belief belief, double level) {
    this.belief = belief;
    this.interval = belief.interval(level);
    return this;
  }

  /** With an interval that no belief stands behind, like the days between two looks. */
  public EvidenceBuilder within(Interval interval) {
    this.interval = interval;
    return this;
  }

  public EvidenceBuilder citing(String text, String href) {
    records.add(new RecordLink(text, href));
    return this;
  }

  public EvidenceBuilder comparedWith(String comparison) {
    this.comparison = comparison;
    return this;
  }

  /** With one more thing to say about it. */
  public EvidenceBuilder remarking(String remark) {
    remarks.add(remark);
    return this;
  }

  /** With the reason why nobody can be discarded by it. */
  public EvidenceBuilder barringDiscard(String remark) {
    discardBarred = true;
    return remarking(remark);
  }

  /** With the evidence of each valid occasion, newest first. */
  public EvidenceBuilder onOccasions(List<Evidence> occasions) {
    this.occasions = occasions;
    return this;
  }

  public Evidence build() {
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
        moot,
        belief);
  }
}
