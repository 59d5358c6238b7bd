package trialwood.trial.web;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import trialwood.trial.EntryRole;
import trialwood.trial.SiteEvent;

/** The rows of the trials' pages, each list read in one statement. */
@Component
class TrialBook {

  record TrialRow(
      UUID id,
      UUID cropId,
      String code,
      String name,
      @Nullable String objective,
      @Nullable Long seed,
      int blocks,
      int plantsPerPlot,
      @Nullable Integer spacingMm,
      int entries,
      int sites,
      int plots) {}

  /** A trial at a site. */
  record SiteRow(
      UUID id,
      UUID trialId,
      String trial,
      UUID siteId,
      String site,
      String name,
      @Nullable String hardinessZone,
      LocalDate plantedOn,
      int plots) {}

  record EntryRow(
      UUID entryId, UUID accessionId, String code, @Nullable String talkName, EntryRole role) {}

  /** A trait that was looked for on the plots; {@code none} of its records gave no value. */
  record TraitRow(String code, String name, int seasons, int values, int none) {}

  /**
   * An event at a site of a trial.
   *
   * @param traits the codes of what it takes out; empty for an event that is only kept in mind
   * @param plots how many plots are named; 0 for all
   */
  record EventRow(
      String site,
      LocalDate onDate,
      SiteEvent.Kind kind,
      String note,
      @Nullable LocalDate voidFrom,
      @Nullable LocalDate voidUntil,
      @Nullable String traits,
      int plots) {}

  /** A plot in its place; {@code entry} numbers the entries for eyes that are not to know them. */
  record PlotRow(
      UUID unitId,
      String label,
      int block,
      @Nullable Integer rowNumber,
      @Nullable Integer columnNumber,
      int plants,
      String accession,
      int entry) {}

  private static final String TRIALS =
      """
      select t.id, t.crop_id, t.code, t.name, t.objective, t.seed, t.blocks, t.plants_per_plot,
             t.spacing_mm,
             (select count(*) from trial_entry e where e.trial_id = t.id) as entries,
             (select count(*) from trial_site ts where ts.trial_id = t.id) as sites,
             (select count(*) from plot p join trial_site ts on ts.id = p.trial_site_id
              where ts.trial_id = t.id) as plots
      from trial t
      """;

  private static final String SITES =
      """
      select ts.id, ts.trial_id, t.code as trial, s.id as site_id, s.code as site, s.name,
             s.hardiness_zone, ts.planted_on,
             (select count(*) from plot p where p.trial_site_id = ts.id) as plots
      from trial_site ts
      join trial t on t.id = ts.trial_id
      join site s on s.id = ts.site_id
      """;

  private final JdbcClient jdbc;

  TrialBook(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  List<TrialRow> trials() {
    return jdbc.sql(TRIALS + " order by t.code desc").query(TrialRow.class).list();
  }

  Optional<TrialRow> trial(String code) {
    return jdbc.sql(TRIALS + " where t.code = :code")
        .param("code", code)
        .query(TrialRow.class)
        .optional();
  }

  /** Every trial at every site, newest planting first. */
  List<SiteRow> plantings() {
    return jdbc.sql(SITES + " order by ts.planted_on desc, t.code, s.code")
        .query(SiteRow.class)
        .list();
  }

  List<SiteRow> sites(UUID trialId) {
    return jdbc.sql(SITES + " where ts.trial_id = :trial order by ts.planted_on, s.code")
        .param("trial", trialId)
        .query(SiteRow.class)
        .list();
  }

  Optional<SiteRow> site(String trial, String site) {
    return jdbc.sql(SITES + " where t.code = :trial and s.code = :site")
        .param("trial", trial)
        .param("site", site)
        .query(SiteRow.class)
        .optional();
  }

  List<EntryRow> entries(UUID trialId) {
    return jdbc.sql(
            """
            select e.id as entry_id, a.id as accession_id, a.code, a.talk_name, e.role
            from trial_entry e join accession a on a.id = e.accession_id
            where e.trial_id = :trial
            order by case when e.role = 'CANDIDATE' then 0 else 1 end, a.code
            """)
        .param("trial", trialId)
        .query(EntryRow.class)
        .list();
  }

  List<TraitRow> traits(UUID trialId) {
    return jdbc.sql(
            """
            select t.code, t.name, count(distinct extract(year from o.on_date)) as seasons,
                   count(o.number_value) as "values",
                   sum(case when o.none_because is null then 0 else 1 end) as none
            from plot p
            join trial_site ts on ts.id = p.trial_site_id and ts.trial_id = :trial
            join observation o on o.unit_id = p.unit_id
            join trait t on t.id = o.trait_id
            where t.kind in ('MEASUREMENT', 'SCORE', 'COUNT')
              and not exists (select 1 from observation later where later.supersedes_id = o.id)
            group by t.code, t.name
            order by t.name
            """)
        .param("trial", trialId)
        .query(TraitRow.class)
        .list();
  }

  List<EventRow> events(UUID trialId) {
    return jdbc.sql(
            """
            select s.name as site, e.on_date, e.kind, e.note, e.void_from, e.void_until,
                   (select string_agg(t.code, ', ' order by t.code)
                    from site_event_trait et join trait t on t.id = et.trait_id
                    where et.event_id = e.id) as traits,
                   (select count(*) from site_event_plot ep where ep.event_id = e.id) as plots
            from site_event e
            join site s on s.id = e.site_id
            join trial_site ts on ts.site_id = e.site_id and ts.trial_id = :trial
            where e.trial_id is null or e.trial_id = :trial
            order by e.on_date
            """)
        .param("trial", trialId)
        .query(EventRow.class)
        .list();
  }

  /** The plots of a trial at one site in walking order, with what stands in them that day. */
  List<PlotRow> plots(UUID trialSiteId, LocalDate day) {
    return jdbc.sql(
            """
            select p.unit_id, u.label, p.block, p.row_number, p.column_number, p.plants,
                   a.code as accession,
                   (select count(*) from trial_entry earlier
                    where earlier.trial_id = e.trial_id and earlier.id <= e.id) as entry
            from plot p
            join unit u on u.id = p.unit_id
            join trial_entry e on e.id = p.entry_id
            left join holding h on h.unit_id = p.unit_id
              and h.from_date <= :day and :day < h.until_date
            join accession a on a.id = coalesce(h.accession_id, e.accession_id)
            where p.trial_site_id = :site
            order by p.row_number,
                     case when mod(p.row_number, 2) = 1 then p.column_number
                          else -p.column_number end,
                     u.label
            """)
        .param("site", trialSiteId)
        .param("day", day)
        .query(PlotRow.class)
        .list();
  }
}
