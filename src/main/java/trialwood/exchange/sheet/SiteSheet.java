package trialwood.exchange.sheet;

import java.math.BigDecimal;
import org.springframework.stereotype.Component;
import trialwood.exchange.Column;
import trialwood.exchange.Rows;
import trialwood.exchange.Sheet;
import trialwood.site.Site;
import trialwood.site.Sites;

/** The places where plants stand. */
@Component
class SiteSheet extends Sheet {

  private static final Column<String> SITE =
      Column.text("site", 20, "short code of the site").key();
  private static final Column<String> NAME =
      Column.text("name", 80, "what people call it").required();
  private static final Column<String> PLACE =
      Column.text("place", 120, "where it is, soil and climate in words");
  private static final Column<String> HARDINESS_ZONE =
      Column.text("hardiness_zone", 3, "half-zone of the winter minimum, such as 6b");
  private static final Column<BigDecimal> LATITUDE =
      Column.decimal("latitude", 9, 6, "degrees north");
  private static final Column<BigDecimal> LONGITUDE =
      Column.decimal("longitude", 9, 6, "degrees east");
  private static final Column<String> COOPERATOR =
      Column.text("cooperator", 80, "who tends it, if not the nursery");

  private final Sites sites;

  SiteSheet(Sites sites) {
    super(3, "sites", SITE, NAME, PLACE, HARDINESS_ZONE, LATITUDE, LONGITUDE, COOPERATOR);
    this.sites = sites;
  }

  @Override
  protected void apply(Rows rows) {
    rows.each(
        row ->
            sites.save(
                new Site(
                    row.the(SITE),
                    row.the(NAME),
                    row.maybe(PLACE),
                    row.maybe(HARDINESS_ZONE),
                    row.maybe(LATITUDE),
                    row.maybe(LONGITUDE),
                    row.maybe(COOPERATOR))));
  }

  @Override
  protected String query() {
    return """
        select code, name, place, hardiness_zone, latitude, longitude, cooperator
        from site
        order by id
        """;
  }
}
