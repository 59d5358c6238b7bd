package trialwood.propagation;

import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import java.util.Locale;
import java.util.UUID;
import org.hibernate.annotations.UuidGenerator;
import org.jspecify.annotations.Nullable;
import trialwood.record.Check;
import trialwood.record.Checked;

/** The cuttings of one accession in a run. Whose they are is said by the ties of its trays. */
@Entity
public class Batch {

  /** What the cuttings were taken from. */
  public enum Source {
    ORTET,
    STOCK_PLANT,
    CONTAINER_PLANT;

    /** As words on a page and in a file. */
    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
  }

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  private @Nullable UUID id;

  private UUID runId;
  private String code;

  @Enumerated(EnumType.STRING)
  private Source source;

  /** Only where it differs from the run's. */
  @Embedded private @Nullable Treatment treatment;

  private @Nullable String note;
  private @Nullable UUID sourceUnitId;
  @Embedded private @Nullable Checked checked;

  public Batch(
      UUID runId,
      String code,
      Source source,
      @Nullable Treatment treatment,
      @Nullable String note) {
    this(runId, code, source, null, treatment, note, null);
  }

  /**
   * @param sourceUnitId the very plant, where it is known
   * @param checked what was asked about it, and the answer
   */
  public Batch(
      UUID runId,
      String code,
      Source source,
      @Nullable UUID sourceUnitId,
      @Nullable Treatment treatment,
      @Nullable String note,
      @Nullable Checked checked) {
    this.runId = runId;
    this.code = code.strip();
    this.source = source;
    this.treatment = treatment;
    this.note = note;
    this.sourceUnitId = sourceUnitId;
    this.checked = checked;
    Check.that()
        .holds(
            !this.code.isEmpty() && this.code.length() <= 40,
            "batch",
            "Give the batch a code of up to 40 letters.")
        .fits(note, 300, "note")
        .orRefuse();
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected Batch() {}

  public @Nullable UUID id() {
    return id;
  }

  public UUID runId() {
    return runId;
  }

  public String code() {
    return code;
  }

  public Source source() {
    return source;
  }

  public @Nullable Treatment treatment() {
    return treatment;
  }

  /** The very plant the cuttings were taken from, where it is known. */
  public @Nullable UUID sourceUnitId() {
    return sourceUnitId;
  }

  public @Nullable Checked checked() {
    return checked;
  }

  public @Nullable String note() {
    return note;
  }
}
