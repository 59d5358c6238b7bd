package trialwood.exchange;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.UuidGenerator;
import org.jspecify.annotations.Nullable;
import trialwood.record.Recorded;

/** A file that was taken in. */
@Entity
public class ImportRecord {

  private static final int LONGEST_NAME = 200;

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  private @Nullable UUID id;

  private String sheet;
  private String fileName;
  private int rowCount;
  private String account;
  private Instant recordedAt;

  ImportRecord(Sheet sheet, String fileName, int rowCount, Recorded recorded) {
    this.sheet = sheet.name();
    this.fileName = fileName.substring(0, Math.min(fileName.length(), LONGEST_NAME));
    this.rowCount = rowCount;
    this.account = recorded.account();
    this.recordedAt = recorded.recordedAt();
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected ImportRecord() {}

  public String sheet() {
    return sheet;
  }

  public String fileName() {
    return fileName;
  }

  public int rowCount() {
    return rowCount;
  }

  public String account() {
    return account;
  }

  public Instant recordedAt() {
    return recordedAt;
  }
}
