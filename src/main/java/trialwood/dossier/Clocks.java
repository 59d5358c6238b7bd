package trialwood.dossier;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;

/** Runs the clocks of any number of candidates, in three statements. */
@Service
public class Clocks {

  private final FilingRoutes routes;
  private final Disclosures disclosures;
  private final Filings filings;

  Clocks(FilingRoutes routes, Disclosures disclosures, Filings filings) {
    this.routes = routes;
    this.disclosures = disclosures;
    this.filings = filings;
  }

  /**
   * The shortest clock on each route that has one, shortest first, by candidate, from what was
   * disclosed and filed up to that day.
   */
  public Map<UUID, List<RouteClock>> of(Set<UUID> accessions, LocalDate asOf) {
    List<FilingRoute> all = routes.findAllByOrderByCode();
    List<Filing> filed = filings.standing(accessions, asOf);
    return disclosures.standing(accessions, asOf).stream()
        .collect(Collectors.groupingBy(Disclosure::accessionId))
        .entrySet()
        .stream()
        .collect(
            Collectors.toMap(
                Map.Entry::getKey,
                entry ->
                    all.stream()
                        .flatMap(route -> shortest(route, entry.getValue(), filed))
                        .sorted(Comparator.comparing(it -> it.clock().last()))
                        .toList()));
  }

  private static Stream<RouteClock> shortest(
      FilingRoute route, List<Disclosure> disclosed, List<Filing> filed) {
    return disclosed.stream()
        .flatMap(
            it ->
                route.clock(it).stream()
                    .map(clock -> new RouteClock(route, it, clock, first(route, it, filed))))
        .min(Comparator.comparing(it -> it.clock().last()))
        .stream();
  }

  private static @Nullable Filing first(
      FilingRoute route, Disclosure disclosure, List<Filing> filed) {
    return filed.stream()
        .filter(it -> it.routeId().equals(route.id()))
        .filter(it -> it.accessionId().equals(disclosure.accessionId()))
        .findFirst()
        .orElse(null);
  }
}
