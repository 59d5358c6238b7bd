package trialwood.site;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import java.math.BigDecimal;
import java.util.UUID;
import org.hibernate.annotations.UuidGenerator;
import org.hibernate.envers.Audited;
import org.jspecify.annotations.Nullable;
import trialwood.record.Check;

/** A place where plants stand: the home block, a trial field, a cooperator's land. */
@Entity
@Audited
public class Site {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  private @Nullable UUID id;

  @Version private int version;
  private String code;
  private String name;
  private @Nullable String place;
  private @Nullable String hardinessZone;
  private @Nullable BigDecimal latitude;
  private @Nullable BigDecimal longitude;
  private @Nullable String cooperator;

  /**
   * @param hardinessZone half-zone of the winter minimum, 1a to 13b
   * @param latitude degrees north
   * @param longitude degrees east
   */
  public Site(
      String code,
      String name,
      @Nullable String place,
      @Nullable String hardinessZone,
      @Nullable BigDecimal latitude,
      @Nullable BigDecimal longitude,
      @Nullable String cooperator) {
    this.code = code.strip();
    Check.that()
        .holds(!this.code.isEmpty(), "site", "Give the site a short code.")
        .isPlain(this.code, "site")
        .orRefuse();
    describe(name, place, hardinessZone, latitude, longitude, cooperator);
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected Site() {}

  /** Changes what is said of the site; its code stands on records and stays. */
  public void describe(
      String name,
      @Nullable String place,
      @Nullable String hardinessZone,
      @Nullable BigDecimal latitude,
      @Nullable BigDecimal longitude,
      @Nullable String cooperator) {
    Check.that()
        .holds(!name.isBlank(), "name", "Give the site a name.")
        .fits(name.strip(), 80, "name")
        .fits(place, 120, "place")
        .fits(cooperator, 80, "cooperator")
        .holds(
            hardinessZone == null || hardinessZone.matches("([1-9]|1[0-3])[ab]"),
            "hardiness_zone",
            "A hardiness zone runs from 1a to 13b, for example 6b.")
        .holds(within(latitude, 90), "latitude", "Latitude runs from -90 to 90 degrees.")
        .holds(within(longitude, 180), "longitude", "Longitude runs from -180 to 180 degrees.")
        .orRefuse();
    this.name = name.strip();
    this.place = place;
    this.hardinessZone = hardinessZone;
    this.latitude = latitude;
    this.longitude = longitude;
    this.cooperator = cooperator;
  }

  private static boolean within(@Nullable BigDecimal degrees, int limit) {
    return degrees == null || degrees.abs().compareTo(BigDecimal.valueOf(limit)) <= 0;
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

  public @Nullable String place() {
    return place;
  }

  public @Nullable String hardinessZone() {
    return hardinessZone;
  }

  public @Nullable BigDecimal latitude() {
    return latitude;
  }

  public @Nullable BigDecimal longitude() {
    return longitude;
  }

  public @Nullable String cooperator() {
    return cooperator;
  }
}
