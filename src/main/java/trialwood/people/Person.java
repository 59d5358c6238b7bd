package trialwood.people;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import java.util.Locale;
import java.util.UUID;
import org.hibernate.annotations.UuidGenerator;
import org.hibernate.envers.Audited;
import org.jspecify.annotations.Nullable;
import trialwood.record.Check;

/** Somebody whose initials stand on records. */
@Entity
@Audited
public class Person {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  private @Nullable UUID id;

  @Version private int version;
  private String initials;
  private String name;
  private @Nullable String duty;
  private boolean active = true;

  public Person(String initials, String name, @Nullable String duty) {
    this.initials = initials.strip().toUpperCase(Locale.ROOT);
    Check.that()
        .holds(
            this.initials.matches("\\p{L}{1,4}"), "initials", "Initials are one to four letters.")
        .orRefuse();
    describe(name, duty, true);
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected Person() {}

  /**
   * Changes what is said of a person; the initials stand on records and stay.
   *
   * @param active whether the person can still be picked on a form
   */
  public void describe(String name, @Nullable String duty, boolean active) {
    Check.that()
        .holds(!name.isBlank(), "name", "Give the person a name.")
        .holds(name.strip().length() <= 80, "name", "A name has at most 80 letters.")
        .holds(
            duty == null || duty.strip().length() <= 80, "duty", "A duty has at most 80 letters.")
        .orRefuse();
    this.name = name.strip();
    this.duty = duty == null || duty.isBlank() ? null : duty.strip();
    this.active = active;
  }

  public @Nullable UUID id() {
    return id;
  }

  public int version() {
    return version;
  }

  public String initials() {
    return initials;
  }

  public String name() {
    return name;
  }

  public @Nullable String duty() {
    return duty;
  }

  public boolean isActive() {
    return active;
  }
}
