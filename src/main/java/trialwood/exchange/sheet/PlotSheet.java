package trialwood.exchange.sheet;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;
import trialwood.exchange.Column;
import trialwood.exchange.Known;
import trialwood.exchange.Row;
import trialwood.exchange.Rows;
import trialwood.exchange.Sheet;
import trialwood.trial.GivenPlot;
import trialwood.trial.Planting;
import trialwood.trial.TrialPlanting;

/** The plots of each trial; every block of every site has every entry. */
@Component
class PlotSheet extends Sheet {

  private static final Column<String> PLOT = Column.text("plot", 60, "its label").key();
  private static final Column<String> TRIAL =
      Column.code("trial", Known.TRIAL, "its trial").required();
  private static final Column<String> SITE = Column.code("site", Known.SITE, "its site").required();
  private static final Column<String> ACCESSION =
      Column.code("accession", Known.ACCESSION, "the entry that stands in it").required();
  private static final Column<Integer> BLOCK = Column.count("block", "its block").required();
  private static final Column<Integer> ROW = Column.count("row", "its row on the ground");
  private static final Column<Integer> COLUMN = Column.count("column", "its place in the row");
  private static final Column<Integer> PLANTS = Column.count("plants", "plants in it").required();

  private final TrialPlanting planting;
  private final JdbcTemplate jdbc;

  PlotSheet(TrialPlanting planting, JdbcTemplate jdbc) {
    super(63, "plots", PLOT, TRIAL, SITE, ACCESSION, BLOCK, ROW, COLUMN, PLANTS);
    this.planting = planting;
    this.jdbc = jdbc;
  }

  @Override
  protected void apply(Rows rows) {
    Map<String, UUID> named = new TreeMap<>();
    Map<UUID, Planting> open = new LinkedHashMap<>();
    rows.each(
        row -> {
          UUID trial = row.id(TRIAL);
          named.put(row.the(TRIAL), trial);
          open.computeIfAbsent(trial, planting::open).add(plot(row));
        });
    open.values().forEach(one -> planting.plant(one, null));
    named.forEach((code, trial) -> refuseGaps(rows, code, trial));
  }

  private static GivenPlot plot(Row row) {
    return new GivenPlot(
        row.the(PLOT),
        row.id(SITE),
        row.id(ACCESSION),
        row.the(BLOCK),
        row.maybe(ROW),
        row.maybe(COLUMN),
        row.the(PLANTS));
  }

  /** A trial is planted whole: a file that lacks a plot was cut off or mistyped. */
  private void refuseGaps(Rows rows, String code, UUID trial) {
    List<String> gaps =
        jdbc.queryForList(
            """
            select s.code || ', block ' || b.block || ': ' || a.code
            from trial_site ts
              join site s on s.id = ts.site_id
              join (select distinct trial_site_id, block from plot) b on b.trial_site_id = ts.id
              join trial_entry e on e.trial_id = ts.trial_id
              join accession a on a.id = e.accession_id
              left join plot p on p.trial_site_id = ts.id and p.block = b.block
                and p.entry_id = e.id
            where ts.trial_id = ? and p.unit_id is null
            order by s.code, b.block, a.code
            """,
            String.class,
            trial);
    for (String gap : gaps) {
      rows.refuse(PLOT, "Trial %s lacks a plot: %s.".formatted(code, gap));
    }
  }

  @Override
  protected String query() {
    return """
        select u.label, t.code, s.code, a.code, p.block, p.row_number, p.column_number, p.plants
        from plot p
          join unit u on u.id = p.unit_id
          join trial_site ts on ts.id = p.trial_site_id
          join trial t on t.id = ts.trial_id
          join site s on s.id = ts.site_id
          join trial_entry e on e.id = p.entry_id
          join accession a on a.id = e.accession_id
        order by p.unit_id
        """;
  }
}
