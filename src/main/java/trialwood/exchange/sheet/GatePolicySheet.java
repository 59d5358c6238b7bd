package trialwood.exchange.sheet;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import trialwood.candidate.Stage;
import trialwood.crop.Traits;
import trialwood.evidence.Ask;
import trialwood.exchange.Column;
import trialwood.exchange.Known;
import trialwood.exchange.Row;
import trialwood.exchange.Rows;
import trialwood.exchange.Sheet;
import trialwood.gate.Criterion;
import trialwood.gate.Direction;
import trialwood.gate.DiscardOccasions;
import trialwood.gate.GatePolicies;
import trialwood.gate.GatePolicy;
import trialwood.gate.Kind;
import trialwood.gate.LeastEvidence;
import trialwood.gate.Need;
import trialwood.gate.Threshold;
import trialwood.lineage.CheckRole;

/** What the gates ask: one row a criterion, all rows of one version together. */
@Component
class GatePolicySheet extends Sheet {

  private static final Column<String> CROP = Column.code("crop", Known.CROP, "the crop").key();
  private static final Column<Integer> POLICY =
      Column.count("policy", "version of the policy; a change makes a new one").key();
  private static final Column<LocalDate> IN_FORCE_FROM =
      Column.day("in_force_from", "first day of this version").required();
  private static final Column<Stage> GATE = Column.choice("gate", Stage.class, "the gate").key();
  private static final Column<String> CRITERION =
      Column.text("criterion", 40, "its code: lower-case letters, figures, dashes").key();
  private static final Column<String> LABEL =
      Column.text("label", 120, "what is asked, in a few words").required();
  private static final Column<Kind> KIND =
      Column.choice("kind", Kind.class, "how it is asked").required();
  private static final Column<Need> NEED =
      Column.choice("need", Need.class, "musts decide, preferences inform").required();
  private static final Column<String> METRIC =
      Column.text("metric", 60, "what the records are asked; empty for what a person attests");
  private static final Column<String> TRAIT =
      Column.text("trait", 20, "the trait, for a metric that is about one");
  private static final Column<CheckRole> CHECK =
      Column.choice("check", CheckRole.class, "the check it is compared with");
  private static final Column<Direction> DIRECTION =
      Column.choice("direction", Direction.class, "the good side of the line");
  private static final Column<BigDecimal> ADVANCE_LINE =
      Column.decimal("advance_line", 12, 4, "speaks for advancing from here on");
  private static final Column<BigDecimal> ADVANCE_CHANCE =
      Column.decimal("advance_chance", 5, 4, "chance of reaching it that is asked for, 0 to 1");
  private static final Column<BigDecimal> DISCARD_LINE =
      Column.decimal("discard_line", 12, 4, "speaks for a discard beyond this");
  private static final Column<BigDecimal> DISCARD_CHANCE =
      Column.decimal("discard_chance", 5, 4, "chance of lying beyond it that is asked for");
  private static final Column<Integer> LEAST_UNITS =
      Column.count("least_units", "least cuttings or plants");
  private static final Column<Integer> LEAST_REPLICATES =
      Column.count("least_replicates", "least trays or plots");
  private static final Column<Integer> LEAST_SITES = Column.count("least_sites", "least sites");
  private static final Column<Integer> LEAST_SEASONS =
      Column.count("least_seasons", "least seasons");
  private static final Column<Integer> DISCARD_OCCASIONS =
      Column.count("discard_occasions", "valid occasions in a row that a discard takes");
  private static final Column<Integer> DISCARD_OCCASIONS_OUTSTANDING =
      Column.count("discard_occasions_outstanding", "the same for what was marked outstanding");
  private static final Column<BigDecimal> ALLOWED_PERCENT =
      Column.decimal("allowed_percent", 7, 4, "losses a lot may have in truth, for allowances");
  private static final Column<String> WHY =
      Column.text("why", 300, "one sentence, shown beside it").required();

  private record Version(UUID cropId, int number) {}

  private final GatePolicies policies;
  private final Traits traits;

  GatePolicySheet(GatePolicies policies, Traits traits) {
    super(
        10,
        "gate-policies",
        CROP,
        POLICY,
        IN_FORCE_FROM,
        GATE,
        CRITERION,
        LABEL,
        KIND,
        NEED,
        METRIC,
        TRAIT,
        CHECK,
        DIRECTION,
        ADVANCE_LINE,
        ADVANCE_CHANCE,
        DISCARD_LINE,
        DISCARD_CHANCE,
        LEAST_UNITS,
        LEAST_REPLICATES,
        LEAST_SITES,
        LEAST_SEASONS,
        DISCARD_OCCASIONS,
        DISCARD_OCCASIONS_OUTSTANDING,
        ALLOWED_PERCENT,
        WHY);
    this.policies = policies;
    this.traits = traits;
  }

  @Override
  protected void apply(Rows rows) {
    CropTraits known = new CropTraits(traits.findAll());
    Set<Version> onRecord =
        policies.findAll().stream()
            .map(policy -> new Version(policy.cropId(), policy.number()))
            .collect(Collectors.toSet());
    Map<Version, GatePolicy> made = new HashMap<>();
    rows.each(
        row -> {
          Version version = new Version(row.id(CROP), row.the(POLICY));
          if (onRecord.contains(version)) {
            throw row.refused(POLICY, "This version is on record. A change makes a new version.");
          }
          GatePolicy policy =
              made.computeIfAbsent(
                  version, it -> new GatePolicy(it.cropId(), it.number(), row.the(IN_FORCE_FROM)));
          if (!policy.inForceFrom().equals(row.the(IN_FORCE_FROM))) {
            throw row.refused(IN_FORCE_FROM, "All rows of one version begin on the same day.");
          }
          policy.add(criterion(row, ask(row, known, version.cropId())));
        });
    policies.saveAll(List.copyOf(made.values()));
  }

  private static @Nullable Ask ask(Row row, CropTraits known, UUID crop) {
    String metric = row.maybe(METRIC);
    if (metric == null) {
      return null;
    }
    UUID trait = row.maybe(TRAIT) == null ? null : known.id(crop, row, TRAIT);
    return new Ask(metric, trait, row.maybe(CHECK));
  }

  private static Criterion criterion(Row row, @Nullable Ask ask) {
    return new Criterion(
        row.the(GATE),
        row.the(CRITERION),
        row.the(LABEL),
        row.the(KIND),
        row.the(NEED),
        ask,
        row.maybe(DIRECTION),
        new Threshold(row.maybe(ADVANCE_LINE), row.maybe(ADVANCE_CHANCE)),
        new Threshold(row.maybe(DISCARD_LINE), row.maybe(DISCARD_CHANCE)),
        new LeastEvidence(
            row.maybe(LEAST_UNITS),
            row.maybe(LEAST_REPLICATES),
            row.maybe(LEAST_SITES),
            row.maybe(LEAST_SEASONS)),
        new DiscardOccasions(
            row.maybe(DISCARD_OCCASIONS), row.maybe(DISCARD_OCCASIONS_OUTSTANDING)),
        row.maybe(ALLOWED_PERCENT),
        row.the(WHY));
  }

  @Override
  protected String query() {
    return """
        select r.code, p.number, p.in_force_from, c.gate, c.code, c.label, c.kind, c.need, c.metric,
               t.code, c.check_role, c.direction, c.advance_line, c.advance_chance, c.discard_line,
               c.discard_chance, c.least_units, c.least_replicates, c.least_sites, c.least_seasons,
               c.discard_occasions, c.discard_occasions_outstanding, c.allowed_percent, c.why
        from criterion c
          join gate_policy p on p.id = c.policy_id
          join crop r on r.id = p.crop_id
          left join trait t on t.id = c.trait_id
        order by r.code, p.number, c.place
        """;
  }
}
