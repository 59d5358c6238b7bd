package trialwood.house;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import java.util.UUID;
import org.hibernate.annotations.UuidGenerator;
import org.hibernate.envers.Audited;
import org.jspecify.annotations.Nullable;
import trialwood.record.Check;
import trialwood.record.CodeKey;

/** A house that people go into: mist house, tunnel, cold house. */
@Entity
@Audited
public class House {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  private @Nullable UUID id;

  @Version private int version;
  private String name;
  private String nameKey;
  private boolean propagates;
  private @Nullable String note;

  /**
   * @param propagates cuttings stand in it, so that frost in it is a slip of the pen and a cold
   *     medium is asked about
   */
  public House(String name, boolean propagates, @Nullable String note) {
    this.name = name.strip();
    this.nameKey = CodeKey.of(this.name);
    Check.that()
        .holds(!nameKey.isEmpty(), "name", "Give the house a name.")
        .isPlain(this.name, "name")
        .fits(this.name, 60, "name")
        .orRefuse();
    describe(propagates, note);
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected House() {}

  /** Changes what is said of the house; its name stands on the log and stays. */
  public void describe(boolean propagates, @Nullable String note) {
    Check.that().fits(note, 300, "note").orRefuse();
    this.propagates = propagates;
    this.note = note;
  }

  public @Nullable UUID id() {
    return id;
  }

  public int version() {
    return version;
  }

  public String name() {
    return name;
  }

  public boolean propagates() {
    return propagates;
  }

  public @Nullable String note() {
    return note;
  }

  /** Whether a place as people write it lies in this house: {@code mist house, bench 2}. */
  public boolean holds(String place) {
    return CodeKey.of(place).startsWith(nameKey);
  }
}
