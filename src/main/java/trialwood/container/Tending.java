package trialwood.container;

import java.math.BigDecimal;
import java.time.Clock;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import trialwood.crop.Crops;
import trialwood.lineage.Accession;
import trialwood.lineage.Accessions;
import trialwood.record.Checked;
import trialwood.record.Problem;
import trialwood.record.Recorded;
import trialwood.record.Recorder;
import trialwood.record.Refused;
import trialwood.web.Measures;

/** Keeps what is done to a lot between potting and shift, and how good its plants are. */
@Service
public class Tending {

  /** Shoots that come after it may not ripen before frost. Common practice, no source. */
  private static final MonthDay LAST_CUT = MonthDay.of(8, 15);

  private static final int FEW = 5;

  private final LotRecords records;
  private final Lots lots;
  private final LotCares cares;
  private final LotGrades grades;
  private final Holders holders;
  private final Accessions accessions;
  private final Crops crops;
  private final Recorder recorder;
  private final Clock clock;

  Tending(
      LotRecords records,
      Lots lots,
      LotCares cares,
      LotGrades grades,
      Holders holders,
      Accessions accessions,
      Crops crops,
      Recorder recorder,
      Clock clock) {
    this.records = records;
    this.lots = lots;
    this.cares = cares;
    this.grades = grades;
    this.holders = holders;
    this.accessions = accessions;
    this.crops = crops;
    this.recorder = recorder;
    this.clock = clock;
  }

  /** What is unusual about it: a late cut, or a medium colder than the roots of the crop stand. */
  public List<Problem> questions(UUID lotId, NewCare care) {
    List<Problem> asked = new ArrayList<>();
    if (care.kind().isCut() && MonthDay.from(care.on()).isAfter(LAST_CUT)) {
      asked.add(
          new Problem(
              "on",
              "After 15 August new shoots may not ripen before the frost. Is the day right?"));
    }
    BigDecimal lowest = care.lowestCelsius();
    if (lowest != null) {
      rootKill(lotId, care.on())
          .filter(limit -> lowest.compareTo(limit) < 0)
          .map(
              limit ->
                  "Its roots die below %s °C. Was it the medium, not the air?".formatted(limit))
          .ifPresent(sentence -> asked.add(new Problem("lowestCelsius", sentence)));
    }
    return asked;
  }

  /**
   * Keeps a pinch, a pruning, or the beginning or end of a winter under cover.
   *
   * @param checked what was asked about it and answered, if anything
   * @throws Refused when it is impossible
   */
  @Transactional
  public void care(UUID lotId, NewCare care, @Nullable Checked checked) {
    refuseTomorrow(care.on());
    cares.saveAndFlush(
        new LotCare(records.known(lotId), care, checked, recorder.by(care.personId())));
  }

  /** Puts what was done in the place of an earlier record of the same lot; both stay readable. */
  @Transactional
  public void correctCare(UUID earlierId, NewCare care, String reason, @Nullable Checked checked) {
    LotCare earlier = cares.findById(earlierId).orElseThrow(Tending::unknown);
    refuseReplaced(cares.existsBySupersedesId(earlierId));
    refuseTomorrow(care.on());
    cares.saveAndFlush(
        new LotCare(records.locked(earlier.lotId()), care, checked, recorder.by(care.personId()))
            .insteadOf(earlierId, reason));
  }

  /** What is unusual about it: all of a few are A. */
  public static List<Problem> questions(NewGrade grade) {
    boolean allOfFew =
        grade.a() != null && grade.a() == grade.graded() && grade.a() > 0 && grade.a() < FEW;
    return allOfFew
        ? List.of(
            new Problem(
                "a",
                "All %d are A. Are these all the plants, or the best ones?".formatted(grade.a())))
        : List.of();
  }

  /**
   * Keeps a grading.
   *
   * @param checked what was asked about it and answered, if anything
   * @throws Refused when it is impossible, as when more were graded than live
   */
  @Transactional
  public void grade(UUID lotId, NewGrade grade, @Nullable Checked checked) {
    refuseTomorrow(grade.on());
    long alive = lots.ledger(lotId, grade.on()).alive();
    Recorded recorded = recorder.by(grade.personId());
    grades.saveAndFlush(new LotGrade(records.locked(lotId), grade, alive, checked, recorded));
  }

  /** Puts a grading in the place of an earlier one of the same lot; both stay readable. */
  @Transactional
  public void correctGrade(
      UUID earlierId, NewGrade grade, String reason, @Nullable Checked checked) {
    LotGrade earlier = grades.findById(earlierId).orElseThrow(Tending::unknown);
    Lot lot = records.locked(earlier.lotId());
    refuseReplaced(grades.existsBySupersedesId(earlierId));
    refuseTomorrow(grade.on());
    long alive = lots.ledger(earlier.lotId(), grade.on()).alive();
    grades.saveAndFlush(
        new LotGrade(lot, grade, alive, checked, recorder.by(grade.personId()))
            .insteadOf(earlierId, reason));
  }

  private static Refused unknown() {
    return new Refused("record", "No such record is kept.");
  }

  private static void refuseReplaced(boolean replaced) {
    if (replaced) {
      throw new Refused(
          "supersedeReason", "Somebody has replaced this record already. Open the lot afresh.");
    }
  }

  private Optional<BigDecimal> rootKill(UUID lotId, LocalDate day) {
    return holders
        .of(lotId, day)
        .flatMap(accessions::findById)
        .map(Accession::cropId)
        .flatMap(crops::findById)
        .map(crop -> crop.rootKillCelsius());
  }

  private void refuseTomorrow(LocalDate day) {
    if (day.isAfter(LocalDate.now(clock))) {
      throw new Refused(
          "on", "%s lies ahead; records are of what was done.".formatted(Measures.day(day)));
    }
  }
}
