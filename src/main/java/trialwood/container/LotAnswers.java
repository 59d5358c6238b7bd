package trialwood.container;

import java.time.LocalDate;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import trialwood.analysis.Interval;
import trialwood.analysis.rate.BinomialInterval;
import trialwood.container.GradeEvidence.Graded;
import trialwood.container.GradeEvidence.Rooted;
import trialwood.container.LotEvidence.Counted;
import trialwood.container.WinterEvidence.Wintered;
import trialwood.evidence.Evidence;
import trialwood.evidence.EvidenceBuilder;
import trialwood.web.Measures;

/** Answers that are read from the counts and gradings of lots. */
@Component
class LotAnswers {

  private static final double LEVEL = 0.95;

  private final LotEvidence lots;
  private final GradeEvidence grades;
  private final WinterEvidence winters;
  private final Measures measures;

  LotAnswers(LotEvidence lots, GradeEvidence grades, WinterEvidence winters, Measures measures) {
    this.lots = lots;
    this.grades = grades;
    this.winters = winters;
    this.measures = measures;
  }

  Map<UUID, Evidence> lost(Set<UUID> accessions, LocalDate asOf, boolean shifted) {
    return lots.newest(accessions, asOf, shifted).stream()
        .collect(Collectors.toMap(Counted::accessionId, this::lost));
  }

  Map<UUID, Evidence> saleable(Set<UUID> accessions, LocalDate asOf, boolean shifted) {
    return grades.newest(accessions, asOf, shifted).stream()
        .collect(Collectors.toMap(Graded::accessionId, this::saleable));
  }

  Map<UUID, Evidence> rootBall(Set<UUID> accessions, LocalDate asOf, boolean shifted) {
    return grades.rootBalls(accessions, asOf, shifted).stream()
        .collect(Collectors.toMap(Rooted::accessionId, this::rootBall));
  }

  Map<UUID, Evidence> wintered(Set<UUID> accessions, LocalDate asOf) {
    return winters.newest(accessions, asOf).stream()
        .collect(Collectors.toMap(Wintered::accessionId, this::wintered));
  }

  private Evidence lost(Counted lot) {
    EvidenceBuilder evidence =
        Evidence.of(
                lot.gone(), "plants", lot.newest(), "Losses on record, and what a count missed.")
            .from(lot.potted(), 1, measures.share(lot.gone(), lot.potted()) + " potted")
            .over(1, 1);
    if (lot.missing() > 0) {
      evidence.remarking(
          "%d were missing on %s without a record of their loss."
              .formatted(lot.missing(), measures.date(lot.onDate())));
    }
    if (lot.missing() < 0) {
      evidence.remarking(
          "%d more were alive on %s than the records leave."
              .formatted(-lot.missing(), measures.date(lot.onDate())));
    }
    return new CitedLot(lot.label(), lot.onDate()).closes(evidence, measures);
  }

  private Evidence saleable(Graded lot) {
    if (lot.graded() == 0) {
      return Evidence.noRecord("Nothing was alive in lot %s.".formatted(lot.label()));
    }
    return share(
        lot.good(),
        lot.graded(),
        lot.onDate(),
        "Saleable (grade A) ÷ graded; 95 % interval by Wilson's score (1927).",
        new CitedLot(lot.label(), lot.onDate()));
  }

  private Evidence rootBall(Rooted lot) {
    EvidenceBuilder evidence =
        Evidence.of(
                lot.rootBall(),
                "",
                lot.onDate(),
                "Root ball on the scale of 0 to 5: %s.".formatted(RootBall.words(lot.rootBall())))
            .from(1, 1, "1 lot")
            .over(1, 1);
    return new CitedLot(lot.label(), lot.onDate()).closes(evidence, measures);
  }

  private Evidence wintered(Wintered lot) {
    if (lot.autumn() == 0) {
      return Evidence.noRecord("Nothing was alive in lot %s in autumn.".formatted(lot.label()));
    }
    return share(
        lot.survived(),
        lot.autumn(),
        lot.springOn(),
        "Alive at the first count of spring, or taken out alive before it ÷ alive at the last of "
            + "autumn; 95 % interval by Wilson's score (1927).",
        new CitedLot(lot.label(), lot.springOn()));
  }

  private Evidence share(int part, int whole, LocalDate day, String how, CitedLot lot) {
    Interval share = BinomialInterval.wilson(part, whole, LEVEL);
    EvidenceBuilder evidence =
        Evidence.of(100.0 * part / whole, "%", day, how)
            .from(whole, 1, measures.share(part, whole))
            .over(1, 1)
            .within(new Interval(100 * share.low(), 100 * share.high(), share.level()));
    return lot.closes(evidence, measures);
  }
}
