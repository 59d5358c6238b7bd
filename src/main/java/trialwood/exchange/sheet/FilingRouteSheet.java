package trialwood.exchange.sheet;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.springframework.stereotype.Component;
import trialwood.dossier.Disclosure;
import trialwood.dossier.FilingRoute;
import trialwood.dossier.FilingRoutes;
import trialwood.dossier.Grace;
import trialwood.dossier.Term;
import trialwood.exchange.Column;
import trialwood.exchange.Row;
import trialwood.exchange.Rows;
import trialwood.exchange.Sheet;

/** The ways to protect a variety, with their periods. */
@Component
class FilingRouteSheet extends Sheet {

  private static final Column<String> ROUTE =
      Column.text("route", 20, "short code of the route, such as US-PP").key();
  private static final Column<String> NAME =
      Column.text("name", 80, "whose right it is").required();
  private static final Column<String> TERRITORY =
      Column.text("territory", 40, "where the authority rules, as disclosures name it").required();
  private static final Column<String> LAW = Column.text("law", 200, "where the periods stand");
  private static final Column<Integer> HOME =
      Column.count("home_years", "years after a disclosure in its territory").required();
  private static final Column<Integer> ELSEWHERE =
      Column.count("elsewhere_years", "years after a disclosure elsewhere").required();
  private static final Column<Integer> ELSEWHERE_TREE =
      Column.count("elsewhere_years_tree", "the same, for trees and vines").required();
  private static final Column<List<String>> STARTED_BY =
      Column.list(
              "started_by",
              "disclosures that start the clock: sale, offer, gift, trial-shipment, exhibit,"
                  + " publication")
          .required();
  private static final Column<Integer> PRIORITY =
      Column.count("priority_months", "months of priority after a first filing");
  private static final Column<Integer> TERM = Column.count("term_years", "years the right lasts");
  private static final Column<Integer> TERM_TREE =
      Column.count("term_years_tree", "the same, for trees and vines");
  private static final Column<FilingRoute.Basis> EVIDENCE =
      Column.choice("evidence", FilingRoute.Basis.class, "whether the law's text was seen")
          .required();

  private final FilingRoutes routes;

  FilingRouteSheet(FilingRoutes routes) {
    super(
        9,
        "filing-routes",
        ROUTE,
        NAME,
        TERRITORY,
        LAW,
        HOME,
        ELSEWHERE,
        ELSEWHERE_TREE,
        STARTED_BY,
        PRIORITY,
        TERM,
        TERM_TREE,
        EVIDENCE);
    this.routes = routes;
  }

  @Override
  protected void apply(Rows rows) {
    rows.each(row -> routes.save(route(row)));
  }

  private FilingRoute route(Row row) {
    if (routes.findByCode(row.the(ROUTE)).isPresent()) {
      throw row.refused(ROUTE, "This route is on record.");
    }
    return new FilingRoute(
        row.the(ROUTE),
        row.the(NAME),
        row.the(TERRITORY),
        row.maybe(LAW),
        new Grace(row.the(HOME), row.the(ELSEWHERE), row.the(ELSEWHERE_TREE)),
        row.the(STARTED_BY).stream().map(word -> kind(row, word)).toList(),
        new Term(row.maybe(PRIORITY), row.maybe(TERM), row.maybe(TERM_TREE)),
        row.the(EVIDENCE));
  }

  private static Disclosure.Kind kind(Row row, String word) {
    String constant = word.toUpperCase(Locale.ROOT).replace('-', '_');
    return Arrays.stream(Disclosure.Kind.values())
        .filter(kind -> kind.name().equals(constant))
        .findFirst()
        .orElseThrow(() -> row.refused(STARTED_BY, "“%s” is no kind of it.".formatted(word)));
  }

  @Override
  protected String query() {
    return """
        select r.code, r.name, r.territory, r.law, r.home_years, r.elsewhere_years,
               r.elsewhere_years_tree, lower(replace(r.started_by, '_', '-')), r.priority_months,
               r.term_years, r.term_years_tree, r.evidence
        from filing_route r
        order by r.id
        """;
  }
}
