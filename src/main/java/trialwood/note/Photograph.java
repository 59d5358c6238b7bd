package trialwood.note;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.util.HexFormat;
import java.util.UUID;
import org.hibernate.annotations.UuidGenerator;
import org.jspecify.annotations.Nullable;

/** A photograph that came with a note. */
@Entity
public class Photograph {

  private static final int MEBIBYTE = 1_048_576;

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  private @Nullable UUID id;

  private UUID noteId;
  private int nth;
  private String sha256;
  private int width;
  private int height;
  private @Nullable LocalDate takenOn;

  @Column(length = MEBIBYTE)
  private byte[] picture;

  @Column(length = MEBIBYTE)
  private byte[] small;

  /**
   * @param nth of the note, from 1
   */
  Photograph(UUID noteId, int nth, Developed developed) {
    this.noteId = noteId;
    this.nth = nth;
    this.sha256 = sha256(developed.picture());
    this.width = developed.width();
    this.height = developed.height();
    this.takenOn = developed.takenOn();
    this.picture = developed.picture();
    this.small = developed.small();
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected Photograph() {}

  private static String sha256(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException everyJavaHasIt) {
      throw new IllegalStateException(everyJavaHasIt);
    }
  }

  public byte[] picture() {
    return picture;
  }

  public byte[] small() {
    return small;
  }
}
