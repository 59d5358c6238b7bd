package trialwood.dossier;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import trialwood.web.RecordsUsed;

/** All that the records say of one candidate on one day, for the page and for the print. */
public record Dossier(
    LocalDate asOf,
    Origin origin,
    @Nullable FirstRooting firstRooting,
    List<Described> description,
    List<Descriptions.Known> known,
    List<History<Disclosure>> disclosures,
    List<RouteClock> clocks,
    List<FilingRoute> routes,
    List<History<Filing>> filings) {

  /** The route of a filing, by name. */
  public String routeOf(Filing filing) {
    return routes.stream()
        .filter(route -> filing.routeId().equals(route.id()))
        .map(FilingRoute::name)
        .findFirst()
        .orElseThrow();
  }

  /** The traits with too few values. */
  public List<Described> thin() {
    return description.stream().filter(line -> !line.sample().isEnough()).toList();
  }

  public List<Described> compared() {
    return description.stream().filter(line -> !line.beside().isEmpty()).toList();
  }

  /** The pages of the candidate and of the varieties it stands beside. */
  public Map<String, String> recordsCompared() {
    return RecordsUsed.of(
        Stream.concat(
                Stream.of(origin.code()),
                compared().stream().flatMap(line -> line.beside().stream()).map(Beside::variety))
            .toList(),
        code -> "/accessions/" + code,
        code -> "what was seen on " + code);
  }

  /** The clocks whose last day went by without a filing. */
  public List<RouteClock> runOut() {
    return clocks.stream().filter(it -> it.isRunOut(asOf)).toList();
  }

  /** What is lacking beside the traits, as sentences. */
  public List<String> missing() {
    List<String> missing = new ArrayList<>(origin.missing());
    if (firstRooting == null) {
      missing.add("No batch has rooted yet: there is no first asexual reproduction to tell.");
    }
    if (filings.stream().allMatch(it -> it.latest().isStruckOut())) {
      missing.add("Nothing has been filed.");
    }
    return missing;
  }
}
