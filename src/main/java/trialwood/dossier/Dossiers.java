package trialwood.dossier;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import trialwood.lineage.Accession;

/** Puts a dossier together; nothing of it is stored, so it is never older than the records. */
@Service
public class Dossiers {

  private final Origins origins;
  private final Descriptions descriptions;
  private final Clocks clocks;
  private final FilingRoutes routes;
  private final Disclosures disclosures;
  private final Filings filings;

  Dossiers(
      Origins origins,
      Descriptions descriptions,
      Clocks clocks,
      FilingRoutes routes,
      Disclosures disclosures,
      Filings filings) {
    this.origins = origins;
    this.descriptions = descriptions;
    this.clocks = clocks;
    this.routes = routes;
    this.disclosures = disclosures;
    this.filings = filings;
  }

  @Transactional(readOnly = true)
  public Dossier of(Accession candidate, LocalDate asOf) {
    UUID id = Objects.requireNonNull(candidate.id());
    Set<UUID> one = Set.of(id);
    List<Descriptions.Known> known = descriptions.known(candidate.cropId());
    return new Dossier(
        asOf,
        Objects.requireNonNull(origins.of(one).get(id)),
        origins.firstRootings(one, asOf).get(id),
        descriptions.of(candidate, known, asOf),
        known,
        History.of(disclosures.findByAccessionIdOrderByOnDateAscIdAsc(id)).stream()
            .filter(it -> !it.latest().onDate().isAfter(asOf))
            .toList(),
        clocks.of(one, asOf).getOrDefault(id, List.of()),
        routes.findAllByOrderByCode(),
        History.of(filings.findByAccessionIdOrderByOnDateAscIdAsc(id)).stream()
            .filter(it -> !it.latest().onDate().isAfter(asOf))
            .toList());
  }
}
