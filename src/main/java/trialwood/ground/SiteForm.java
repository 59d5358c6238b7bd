package trialwood.ground;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import trialwood.site.Site;
import trialwood.web.EditForm;
import trialwood.web.Entry;

/** What is said of a site. */
record SiteForm(
    @Nullable UUID formKey,
    @Nullable Integer version,
    @Nullable String name,
    @Nullable String place,
    @Nullable String hardinessZone,
    @Nullable String latitude,
    @Nullable String longitude,
    @Nullable String cooperator)
    implements EditForm {

  static SiteForm of(Site site) {
    return new SiteForm(
        UUID.randomUUID(),
        site.version(),
        site.name(),
        site.place(),
        site.hardinessZone(),
        Boxes.number(site.latitude()),
        Boxes.number(site.longitude()),
        site.cooperator());
  }

  @Override
  public Map<String, String> words() {
    Map<String, String> words = new LinkedHashMap<>();
    words.put("Name", Boxes.text(name));
    words.put("Place, soil and climate", Boxes.text(place));
    words.put("Hardiness zone", Boxes.text(hardinessZone));
    words.put("Latitude", Boxes.text(latitude));
    words.put("Longitude", Boxes.text(longitude));
    words.put("Cooperator", Boxes.text(cooperator));
    return words;
  }

  /**
   * @throws trialwood.record.Refused when something cannot be read or cannot be, or somebody else
   *     was faster
   */
  void change(Site site) {
    sees(site.version());
    Entry entry = new Entry();
    BigDecimal north = entry.decimalIfAny("latitude", latitude);
    BigDecimal east = entry.decimalIfAny("longitude", longitude);
    entry.orRefuse();
    site.describe(
        Boxes.text(name),
        Entry.wordsIfAny(place),
        Entry.wordsIfAny(hardinessZone),
        north,
        east,
        Entry.wordsIfAny(cooperator));
  }
}
