package trialwood.propagation;

import jakarta.persistence.Column;
import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;
import org.hibernate.annotations.UuidGenerator;
import org.jspecify.annotations.Nullable;
import trialwood.record.Check;
import trialwood.record.Checked;
import trialwood.record.Recorded;

/** One sticking of many accessions by the same crew on the same days, beside the bench check. */
@Entity
public class StickingRun {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  private @Nullable UUID id;

  private String code;
  private UUID cropId;
  private LocalDate fromDate;
  private LocalDate toDate;
  private UUID checkAccessionId;
  private @Nullable String crew;
  private @Nullable String bench;
  private @Nullable String mist;

  @Column(name = "bottom_heat_c")
  private @Nullable BigDecimal bottomHeatC;

  private @Nullable String cutting;
  private @Nullable Integer lengthMm;
  @Embedded private Treatment treatment;

  @Column(name = "dip_s")
  private @Nullable Integer dipS;

  private @Nullable String medium;
  private @Nullable String note;
  @Embedded private @Nullable Environment environment;
  @Embedded private @Nullable Checked checked;
  private String account;
  private Instant recordedAt;

  StickingRun(NewRun said, @Nullable Checked checked, Recorded recorded) {
    this.code = said.code().strip();
    this.cropId = said.cropId();
    this.fromDate = said.from();
    this.toDate = said.to();
    this.checkAccessionId = said.checkAccessionId();
    this.crew = said.crew();
    this.bench = said.bench();
    this.mist = said.mist();
    this.bottomHeatC = said.bottomHeatC();
    this.cutting = said.cutting();
    this.lengthMm = said.lengthMm();
    this.treatment = said.treatment();
    this.dipS = said.dipS();
    this.medium = said.medium();
    this.note = said.note();
    this.environment = said.environment();
    this.checked = checked;
    this.account = recorded.account();
    this.recordedAt = recorded.recordedAt();
    Check.that()
        .holds(
            !code.isEmpty() && code.length() <= 30,
            "run",
            "Give the run a code of up to 30 letters.")
        .isPlain(code, "run")
        .fits(crew, 120, "crew")
        .fits(bench, 60, "bench")
        .fits(mist, 120, "mist")
        .fits(cutting, 60, "cutting")
        .fits(medium, 80, "medium")
        .fits(note, 300, "note")
        .holds(!toDate.isBefore(fromDate), "to", "The last sticking day comes before the first.")
        .holds(
            Environment.isWithin(bottomHeatC, 50),
            "bottom_heat_c",
            "Bottom heat runs from 0 to 50 °C.")
        .holds(
            treatment.solutionMadeOn() == null || !treatment.solutionMadeOn().isAfter(toDate),
            "solution_made_on",
            "The solution was made after the last sticking day.")
        .holds(
            lengthMm == null || (lengthMm >= 20 && lengthMm <= 300),
            "length_mm",
            "Cuttings are 20 to 300 mm long.")
        .holds(
            dipS == null || (dipS >= 0 && dipS <= 86_400),
            "dip_s",
            "A dip takes 0 to 86,400 seconds.")
        .orRefuse();
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected StickingRun() {}

  public @Nullable UUID id() {
    return id;
  }

  public String code() {
    return code;
  }

  public UUID cropId() {
    return cropId;
  }

  public LocalDate fromDate() {
    return fromDate;
  }

  public LocalDate toDate() {
    return toDate;
  }

  public UUID checkAccessionId() {
    return checkAccessionId;
  }

  public @Nullable String crew() {
    return crew;
  }

  public @Nullable String bench() {
    return bench;
  }

  public @Nullable String mist() {
    return mist;
  }

  public @Nullable BigDecimal bottomHeatC() {
    return bottomHeatC;
  }

  public @Nullable String cutting() {
    return cutting;
  }

  public @Nullable Integer lengthMm() {
    return lengthMm;
  }

  public @Nullable Treatment treatment() {
    return treatment;
  }

  public @Nullable Integer dipS() {
    return dipS;
  }

  public @Nullable String medium() {
    return medium;
  }

  public Environment environment() {
    return environment == null ? Environment.UNKNOWN : environment;
  }

  /** What was asked about the run before it was stored, and the answer. */
  public @Nullable Checked checked() {
    return checked;
  }

  public @Nullable String note() {
    return note;
  }
}
