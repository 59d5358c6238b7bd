package trialwood.site;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import java.util.UUID;
import org.hibernate.annotations.UuidGenerator;
import org.hibernate.envers.Audited;
import org.jspecify.annotations.Nullable;
import trialwood.record.Check;

/** A bench in a propagation house: places for trays, numbered along it from one end. */
@Entity
@Audited
public class Bench {

  private static final int MOST_PLACES = 1000;

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  private @Nullable UUID id;

  @Version private int version;
  private String code;
  private String name;
  private @Nullable String house;
  private int places;
  private @Nullable String note;

  /**
   * @param house the house it stands in
   * @param places how many trays find room on it
   */
  public Bench(
      String code, String name, @Nullable String house, int places, @Nullable String note) {
    this.code = code.strip();
    Check.that()
        .holds(!this.code.isEmpty(), "bench", "Give the bench a short code, for example M1.")
        .fits(this.code, 20, "bench")
        .isPlain(this.code, "bench")
        .orRefuse();
    describe(name, house, places, note);
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected Bench() {}

  /** Changes what is said of the bench; its code stands on plans and stays. */
  public void describe(String name, @Nullable String house, int places, @Nullable String note) {
    Check.that()
        .holds(!name.isBlank(), "name", "Give the bench a name.")
        .fits(name.strip(), 80, "name")
        .fits(house, 80, "house")
        .holds(
            places >= 1 && places <= MOST_PLACES, "places", "A bench has 1 to 1,000 tray places.")
        .fits(note, 300, "note")
        .orRefuse();
    this.name = name.strip();
    this.house = house;
    this.places = places;
    this.note = note;
  }

  public @Nullable UUID id() {
    return id;
  }

  public int version() {
    return version;
  }

  public String code() {
    return code;
  }

  public String name() {
    return name;
  }

  public @Nullable String house() {
    return house;
  }

  public int places() {
    return places;
  }

  public @Nullable String note() {
    return note;
  }
}
