package trialwood.exchange.sheet;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;
import trialwood.crop.Traits;
import trialwood.exchange.Column;
import trialwood.exchange.Known;
import trialwood.exchange.Row;
import trialwood.exchange.Rows;
import trialwood.exchange.Sheet;
import trialwood.trial.NewSiteEvent;
import trialwood.trial.SiteEvent;
import trialwood.trial.TrialRecords;

/** What befell the sites, and which records it takes out. */
@Component
class SiteEventSheet extends Sheet {

  private static final Column<String> EVENT =
      Column.text("event", 30, "its code, such as HAIL-CH-25").key();
  private static final Column<String> SITE =
      Column.code("site", Known.SITE, "where it happened").required();
  private static final Column<String> TRIAL =
      Column.code("trial", Known.TRIAL, "the trial it is about; empty for all that stood there");
  private static final Column<LocalDate> ON = Column.past("on", "the day it happened").required();
  private static final Column<SiteEvent.Kind> KIND =
      Column.choice("kind", SiteEvent.Kind.class, "what happened").required();
  private static final Column<String> NOTE =
      Column.text("note", 300, "what it did, in a sentence").required();
  private static final Column<LocalDate> VOID_FROM =
      Column.day("void_from", "first day on which the traits are taken out");
  private static final Column<LocalDate> VOID_UNTIL =
      Column.day("void_until", "last day on which they are");
  private static final Column<List<String>> TRAITS =
      Column.list("traits", "traits that are taken out; empty when none is");
  private static final Column<List<String>> PLOTS =
      Column.codes("plots", Known.PLOT, "labels of the plots it hit; empty for all of the site");
  private static final Column<String> BY = Column.by();

  private final TrialRecords records;
  private final Traits traits;
  private final JdbcTemplate jdbc;

  SiteEventSheet(TrialRecords records, Traits traits, JdbcTemplate jdbc) {
    super(
        64,
        "site-events",
        EVENT,
        SITE,
        TRIAL,
        ON,
        KIND,
        NOTE,
        VOID_FROM,
        VOID_UNTIL,
        TRAITS,
        PLOTS,
        BY);
    this.records = records;
    this.traits = traits;
    this.jdbc = jdbc;
  }

  @Override
  protected void apply(Rows rows) {
    CropTraits known = new CropTraits(traits.findAll());
    rows.each(row -> records.report(event(row, known)));
  }

  private NewSiteEvent event(Row row, CropTraits known) {
    UUID trial = row.maybeId(TRIAL);
    UUID crop = trial == null ? null : cropOf(trial);
    return new NewSiteEvent(
        row.the(EVENT),
        row.id(SITE),
        trial,
        row.the(ON),
        row.the(KIND),
        row.the(NOTE),
        row.maybe(VOID_FROM),
        row.maybe(VOID_UNTIL),
        known.ids(crop, row, TRAITS),
        row.ids(PLOTS),
        row.id(BY));
  }

  private @Nullable UUID cropOf(UUID trial) {
    return jdbc.queryForObject("select crop_id from trial where id = ?", UUID.class, trial);
  }

  @Override
  protected String query() {
    return """
        select e.code, s.code, t.code, e.on_date, e.kind, e.note, e.void_from, e.void_until,
               (select string_agg(r.code, ' ' order by r.code)
                from site_event_trait v join trait r on r.id = v.trait_id
                where v.event_id = e.id),
               (select string_agg(u.label, ' ' order by u.label)
                from site_event_plot p join unit u on u.id = p.plot_id
                where p.event_id = e.id),
               w.initials
        from site_event e
          join site s on s.id = e.site_id
          left join trial t on t.id = e.trial_id
          left join person w on w.id = e.person_id
        order by e.id
        """;
  }
}
