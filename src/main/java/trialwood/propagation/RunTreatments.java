package trialwood.propagation;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import trialwood.analysis.rate.TrayCount;
import trialwood.analysis.rate.TreatmentTrays;
import trialwood.lineage.Accessions;

/**
 * Where an accession was stuck with several treatments in one run, they are compared. What a batch
 * does not say, it has from its run.
 */
@Component
public class RunTreatments {

  private final TrayOutcomes outcomes;
  private final Accessions accessions;
  private final JdbcClient jdbc;

  RunTreatments(TrayOutcomes outcomes, Accessions accessions, JdbcClient jdbc) {
    this.outcomes = outcomes;
    this.accessions = accessions;
    this.jdbc = jdbc;
  }

  /** How the cuttings of a tray were treated; {@code usual} is the run's own treatment. */
  private record Treated(
      UUID trayId,
      @Nullable String hormone,
      @Nullable Integer ppm,
      @Nullable String form,
      @Nullable String wounding,
      boolean usual) {

    String words() {
      String strength = ppm == null ? null : ppm + " ppm";
      return Stream.of(hormone == null ? "no hormone" : hormone, strength, form, wounded())
          .filter(Objects::nonNull)
          .collect(Collectors.joining(", "));
    }

    private @Nullable String wounded() {
      return wounding == null || wounding.equals("none") ? null : "wounded: " + wounding;
    }
  }

  /** The accessions with two treatments or more among the trays that count, by code. */
  public List<TreatmentTable> of(StickingRun run, LocalDate asOf) {
    UUID id = Objects.requireNonNull(run.id());
    Map<UUID, Treated> treated = treated(id);
    Map<UUID, List<TreatmentTrays>> compared = new HashMap<>();
    outcomes.ofRun(id, asOf).stream()
        .filter(TrayOutcome::counts)
        .collect(Collectors.groupingBy(TrayOutcome::accessionId))
        .forEach((whose, trays) -> compared.put(whose, treatments(trays, treated)));
    compared.values().removeIf(treatments -> treatments.size() < 2);
    return accessions.findAllById(compared.keySet()).stream()
        .map(
            whose ->
                TreatmentTable.of(whose.code(), Objects.requireNonNull(compared.get(whose.id()))))
        .sorted(Comparator.comparing(TreatmentTable::code))
        .toList();
  }

  private static List<TreatmentTrays> treatments(
      List<TrayOutcome> trays, Map<UUID, Treated> treated) {
    Map<Treated, List<TrayCount>> byTreatment =
        new TreeMap<>(
            Comparator.comparing(Treated::usual).reversed().thenComparing(Treated::words));
    for (TrayOutcome tray : trays) {
      byTreatment
          .computeIfAbsent(
              Objects.requireNonNull(treated.get(tray.trayId())), its -> new ArrayList<>())
          .add(new TrayCount(tray.rooted(), tray.stuck()));
    }
    return byTreatment.entrySet().stream()
        .map(each -> new TreatmentTrays(each.getKey().words(), each.getValue()))
        .toList();
  }

  private Map<UUID, Treated> treated(UUID run) {
    return jdbc
        .sql(
            """
            select t.unit_id as tray_id,
                   coalesce(b.hormone, r.hormone) as hormone, coalesce(b.ppm, r.ppm) as ppm,
                   coalesce(b.form, r.form) as form, coalesce(b.wounding, r.wounding) as wounding,
                   coalesce(b.hormone, r.hormone, '') = coalesce(r.hormone, '')
                     and coalesce(b.ppm, r.ppm, 0) = coalesce(r.ppm, 0)
                     and coalesce(b.form, r.form, '') = coalesce(r.form, '')
                     and coalesce(b.wounding, r.wounding, '') = coalesce(r.wounding, '') as usual
            from tray t
            join batch b on b.id = t.batch_id
            join sticking_run r on r.id = b.run_id
            where r.id = :run
            """)
        .param("run", run)
        .query(Treated.class)
        .list()
        .stream()
        .collect(Collectors.toMap(Treated::trayId, it -> it));
  }
}
