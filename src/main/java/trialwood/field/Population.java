package trialwood.field;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import java.time.LocalDate;
import java.util.UUID;
import org.hibernate.annotations.UuidGenerator;
import org.jspecify.annotations.Nullable;
import trialwood.record.Check;

/** A planted block of seedlings: rows of numbered planting slots. */
@Entity
public class Population {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  private @Nullable UUID id;

  @Version private int version;
  private String code;
  private UUID cropId;
  private UUID siteId;
  private String name;
  private LocalDate plantedOn;
  private int rowCount;
  private int positionsPerRow;
  private int inRowMm;
  private int betweenRowsMm;
  private @Nullable String note;

  /**
   * @param positionsPerRow planting slots in a row, living or not
   * @param inRowMm spacing in the row, mm
   * @param betweenRowsMm spacing between rows, mm
   */
  public Population(
      String code,
      UUID cropId,
      UUID siteId,
      String name,
      LocalDate plantedOn,
      int rowCount,
      int positionsPerRow,
      int inRowMm,
      int betweenRowsMm,
      @Nullable String note) {
    this.code = code.strip();
    this.cropId = cropId;
    this.siteId = siteId;
    this.name = name.strip();
    this.plantedOn = plantedOn;
    this.rowCount = rowCount;
    this.positionsPerRow = positionsPerRow;
    this.inRowMm = inRowMm;
    this.betweenRowsMm = betweenRowsMm;
    this.note = note;
    Check.that()
        .holds(!this.code.isEmpty(), "population", "Give the population a short code.")
        .isPlain(this.code, "population")
        .holds(rowCount >= 1 && rowCount <= 2000, "rows", "A population has 1 to 2,000 rows.")
        .holds(
            positionsPerRow >= 1 && positionsPerRow <= 5000,
            "positions_per_row",
            "A row has 1 to 5,000 positions.")
        .holds(
            inRowMm >= 150 && inRowMm <= 3000,
            "in_row_mm",
            "Spacing in the row runs from 150 to 3,000 mm.")
        .holds(
            betweenRowsMm >= 500 && betweenRowsMm <= 6000,
            "between_rows_mm",
            "Spacing between rows runs from 500 to 6,000 mm.")
        .orRefuse();
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected Population() {}

  /**
   * The label of a planting slot, such as P18/17/88.
   *
   * @throws trialwood.record.Refused for a row or position that the population does not have
   */
  public String label(int row, int position) {
    Check.that()
        .holds(
            row >= 1 && row <= rowCount,
            "row",
            "%s has rows 1 to %d; this says row %d.".formatted(code, rowCount, row))
        .holds(
            position >= 1 && position <= positionsPerRow,
            "position",
            "A row of %s has positions 1 to %d; this says %d."
                .formatted(code, positionsPerRow, position))
        .orRefuse();
    return "%s/%d/%d".formatted(code, row, position);
  }

  public @Nullable UUID id() {
    return id;
  }

  public String code() {
    return code;
  }

  public UUID cropId() {
    return cropId;
  }

  public UUID siteId() {
    return siteId;
  }

  public String name() {
    return name;
  }

  public LocalDate plantedOn() {
    return plantedOn;
  }

  public int rowCount() {
    return rowCount;
  }

  public int positionsPerRow() {
    return positionsPerRow;
  }

  public int inRowMm() {
    return inRowMm;
  }

  public int betweenRowsMm() {
    return betweenRowsMm;
  }

  public @Nullable String note() {
    return note;
  }
}
