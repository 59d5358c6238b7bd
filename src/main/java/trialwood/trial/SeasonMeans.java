package trialwood.trial;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import trialwood.analysis.trial.PlotValue;
import trialwood.analysis.trial.SiteSeason;

/**
 * Reads the means of entries over their plots, by site and season, in three statements however many
 * entries there are.
 *
 * <p>A record counts for the accession that its plot was on the day of the record. The season is
 * the year of that day; a plot that was looked at several times in a season counts once, with the
 * mean of its looks. Superseded records and those an event takes out are left out, and so is what
 * has no number; nothing of that turns into a zero.
 */
@Component
public class SeasonMeans {

  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

  /** Whether an event takes the observation o on the plot p out. */
  static final String TAKEN_OUT =
      """
      (select min(e.kind || ' ' || cast(e.on_date as varchar))
       from site_event e join site_event_trait et on et.event_id = e.id
       where e.site_id = ts.site_id and (e.trial_id is null or e.trial_id = ts.trial_id)
         and et.trait_id = o.trait_id and o.on_date between e.void_from and e.void_until
         and (not exists (select 1 from site_event_plot ep where ep.event_id = e.id)
              or exists (select 1 from site_event_plot ep
                         where ep.event_id = e.id and ep.plot_id = p.unit_id)))
      """;

  private static final String SEEN =
      """
      with seen as (
        select ts.trial_id, ts.site_id, p.unit_id, h.accession_id, o.on_date, o.none_because,
               cast(extract(year from o.on_date) as integer) as season,
               cast(o.number_value as double precision) as number_value,
      """
          + TAKEN_OUT
          + """
             as event
        from plot p
        join trial_site ts on ts.id = p.trial_site_id
        join observation o on o.unit_id = p.unit_id
        join holding h on h.unit_id = p.unit_id
          and h.from_date <= o.on_date and o.on_date < h.until_date
        where o.trait_id = :trait and o.on_date <= :asOf and ts.trial_id in (:trials)
          and not exists (select 1 from observation later where later.supersedes_id = o.id))
      """;

  private final JdbcClient jdbc;

  SeasonMeans(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  /** The trials in which any of the accessions stood by that day. */
  Set<UUID> trialsOf(Collection<UUID> accessions, LocalDate asOf) {
    if (accessions.isEmpty()) {
      return Set.of();
    }
    return Set.copyOf(
        jdbc.sql(
                """
                select distinct ts.trial_id
                from holding h
                join plot p on p.unit_id = h.unit_id
                join trial_site ts on ts.id = p.trial_site_id
                where h.accession_id in (:accessions) and h.from_date <= :asOf
                """)
            .param("accessions", accessions)
            .param("asOf", asOf)
            .query(UUID.class)
            .list());
  }

  /** The trait in all of the trials, from records of that day or before. */
  public TraitSeasons of(UUID traitId, Collection<UUID> trials, LocalDate asOf) {
    if (trials.isEmpty()) {
      return new TraitSeasons(List.of(), List.of());
    }
    List<Gap> gaps = new ArrayList<>(gaps(traitId, trials, asOf));
    Set<List<Object>> named = gaps.stream().map(SeasonMeans::place).collect(Collectors.toSet());
    events(traitId, trials, asOf).stream()
        .filter(event -> !named.contains(place(event)))
        .forEach(gaps::add);
    return new TraitSeasons(means(traitId, trials, asOf), gaps);
  }

  private static List<Object> place(Gap gap) {
    return List.of(gap.trialId(), gap.at());
  }

  private List<SeasonMean> means(UUID traitId, Collection<UUID> trials, LocalDate asOf) {
    return jdbc.sql(
            SEEN
                + """
                , by_plot as (
                  select trial_id, site_id, unit_id, accession_id, season,
                         avg(case when event is null then number_value end) as mean,
                         max(case when event is null and number_value is not null then on_date end)
                           as newest
                  from seen
                  group by trial_id, site_id, unit_id, accession_id, season)
                select b.trial_id, s.code as site, b.season, b.accession_id, a.code as accession,
                       avg(b.mean) as mean, count(b.mean) as plots,
                       count(*) - count(b.mean) as without, max(b.newest) as newest
                from by_plot b
                join site s on s.id = b.site_id
                join accession a on a.id = b.accession_id
                group by b.trial_id, s.code, b.season, b.accession_id, a.code
                order by b.trial_id, s.code, b.season, a.code
                """)
        .param("trait", traitId)
        .param("asOf", asOf)
        .param("trials", trials)
        .query(SeasonMean.class)
        .list();
  }

  /** The trait on the single plots of one trial, a plot's looks of one season as their mean. */
  public List<PlotValue> plots(UUID traitId, UUID trialId, LocalDate asOf) {
    return jdbc.sql(
            SEEN
                + """
                , by_plot as (
                  select site_id, unit_id, accession_id, season,
                         avg(case when event is null then number_value end) as mean
                  from seen
                  group by site_id, unit_id, accession_id, season)
                select s.code as site, b.season, a.code as accession, p.block, u.label, b.mean
                from by_plot b
                join site s on s.id = b.site_id
                join accession a on a.id = b.accession_id
                join plot p on p.unit_id = b.unit_id
                join unit u on u.id = b.unit_id
                where b.mean is not null
                order by s.code, b.season, u.label
                """)
        .param("trait", traitId)
        .param("asOf", asOf)
        .param("trials", List.of(trialId))
        .query(
            (row, n) ->
                new PlotValue(
                    row.getString("accession"),
                    new SiteSeason(row.getString("site"), row.getInt("season")),
                    row.getString("block"),
                    row.getString("label"),
                    row.getDouble("mean")))
        .list();
  }

  private List<Gap> gaps(UUID traitId, Collection<UUID> trials, LocalDate asOf) {
    return jdbc.sql(
            SEEN
                + """
                select g.trial_id, s.code as site, s.name as site_name, g.season,
                       coalesce(g.event, g.none_because) as reason,
                       count(distinct g.unit_id) as plots
                from seen g join site s on s.id = g.site_id
                where g.event is not null or g.none_because is not null
                group by g.trial_id, s.code, s.name, g.season, coalesce(g.event, g.none_because)
                order by g.trial_id, s.code, g.season, reason
                """)
        .param("trait", traitId)
        .param("asOf", asOf)
        .param("trials", trials)
        .query(
            (row, n) ->
                new Gap(
                    row.getObject("trial_id", UUID.class),
                    row.getString("site"),
                    row.getString("site_name"),
                    row.getInt("season"),
                    words(row.getString("reason")),
                    row.getInt("plots")))
        .list();
  }

  /** Events after which nobody looked any more leave no record to say so. */
  private List<Gap> events(UUID traitId, Collection<UUID> trials, LocalDate asOf) {
    return jdbc.sql(
            """
            select ts.trial_id, s.code as site, s.name as site_name, e.kind, e.on_date,
                   cast(extract(year from e.void_from) as integer) as season,
                   (select count(*) from plot p where p.trial_site_id = ts.id
                      and (not exists (select 1 from site_event_plot ep where ep.event_id = e.id)
                           or exists (select 1 from site_event_plot ep
                                      where ep.event_id = e.id and ep.plot_id = p.unit_id)))
                     as plots
            from site_event e
            join site_event_trait et on et.event_id = e.id and et.trait_id = :trait
            join trial_site ts on ts.site_id = e.site_id
              and (e.trial_id is null or e.trial_id = ts.trial_id)
            join site s on s.id = e.site_id
            where ts.trial_id in (:trials) and e.on_date <= :asOf
            order by e.on_date
            """)
        .param("trait", traitId)
        .param("asOf", asOf)
        .param("trials", trials)
        .query(
            (row, n) ->
                new Gap(
                    row.getObject("trial_id", UUID.class),
                    row.getString("site"),
                    row.getString("site_name"),
                    row.getInt("season"),
                    words(row.getString("kind") + " " + row.getString("on_date")),
                    row.getInt("plots")))
        .list();
  }

  /** HAIL 2025-07-19 reads "hail 19 July 2025", NOT_LOOKED_AT "not looked at". */
  private static String words(String reason) {
    String plain = reason.toLowerCase(Locale.ROOT).replace('_', ' ');
    int day = plain.length() - 10;
    return day > 0 && Character.isDigit(plain.charAt(day))
        ? plain.substring(0, day) + LocalDate.parse(plain.substring(day)).format(DAY)
        : plain;
  }
}
