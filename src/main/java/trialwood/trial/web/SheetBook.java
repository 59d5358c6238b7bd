package trialwood.trial.web;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import trialwood.crop.Trait;

/** What is on record already for the plots of a sheet. */
@Component
class SheetBook {

  private final JdbcClient jdbc;

  SheetBook(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  /**
   * A value on record.
   *
   * @param value as people read it
   * @param replaces the value in whose place it stands, and why; none where it is the first
   */
  record Stored(
      UUID id,
      UUID traitId,
      String label,
      String trait,
      LocalDate onDate,
      String value,
      @Nullable String replaces,
      @Nullable String reason) {}

  private static final String STORED =
      """
      select o.id, o.trait_id, u.label, t.code as trait, o.on_date, o.supersede_reason as reason,
             %s as "value", %s as replaces
      from observation o
      join unit u on u.id = o.unit_id
      join trait t on t.id = o.trait_id
      left join observation e on e.id = o.supersedes_id
      where not exists (select 1 from observation later where later.supersedes_id = o.id)
      """
          .formatted(inWords("o"), inWords("e"));

  private static String inWords(String observation) {
    return """
    coalesce(trim(trailing '.' from trim(trailing '0' from cast(%1$s.number_value as varchar(40)))),
             cast(%1$s.date_value as varchar(10)), %1$s.text_value,
             replace(lower(%1$s.none_because), '_', ' '))
    """
        .formatted(observation);
  }

  /** The records of that day, by label of the plot, a slash, code of the trait. */
  Map<String, Stored> on(LocalDate day, List<TrialBook.PlotRow> plots, List<Trait> traits) {
    if (plots.isEmpty() || traits.isEmpty()) {
      return Map.of();
    }
    return jdbc
        .sql(STORED + " and o.unit_id in (:plots) and o.trait_id in (:traits) and o.on_date = :day")
        .param("plots", plots.stream().map(TrialBook.PlotRow::unitId).toList())
        .param("traits", traits.stream().map(Trait::id).toList())
        .param("day", day)
        .query(Stored.class)
        .list()
        .stream()
        .collect(
            Collectors.toMap(
                one -> one.label() + "/" + one.trait(),
                Function.identity(),
                (first, second) -> second));
  }

  /** A value that stands, on a plot of the trial at the site. */
  Optional<Stored> one(UUID id, UUID trialSiteId) {
    return jdbc.sql(
            STORED
                + """
                 and o.id = :id
                 and exists (select 1 from plot p
                             where p.unit_id = o.unit_id and p.trial_site_id = :site)
                """)
        .param("id", id)
        .param("site", trialSiteId)
        .query(Stored.class)
        .optional();
  }
}
