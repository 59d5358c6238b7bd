package trialwood.label;

import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import trialwood.record.CodeKey;

/** Everything that bears a label. */
@Repository
public class Bearers {

  private static final String QUERY =
      """
      select s.code, u.kind, u.label, a.code as accession, r.code as run, b.code as batch,
             coalesce(t.stuck_on, l.potted_on, pp.from_date, ts.planted_on) as on_date,
             coalesce(r.bench, l.yard) as bench,
             coalesce(t.block, cast(pl.block as varchar)) as block,
             coalesce(t.place, 'row ' || pl.row_number || ', ' || pl.column_number) as place,
             c.code as container_class, lu.label as lot, p.number, tr.code as trial, si.name as site
      from unit u
      join short_code s on s.label_key = u.label_key
      left join holding h on h.unit_id = u.id and h.until_date = date '9999-12-31'
      left join accession a on a.id = h.accession_id
      left join tray t on t.unit_id = u.id
      left join batch b on b.id = t.batch_id
      left join sticking_run r on r.id = b.run_id
      left join lot l on l.unit_id = u.id
      left join container_class c on c.id = l.container_class_id
      left join plant p on p.unit_id = u.id
      left join plant_place pp on pp.plant_id = u.id
        and not exists (select 1 from plant_place later
                        where later.plant_id = pp.plant_id and later.from_date > pp.from_date)
      left join unit lu on lu.id = pp.lot_id
      left join plot pl on pl.unit_id = u.id
      left join trial_site ts on ts.id = pl.trial_site_id
      left join trial tr on tr.id = ts.trial_id
      left join site si on si.id = coalesce(ts.site_id, u.site_id)
      where %s
      order by length(t.block), t.block, length(t.place), t.place, p.number, u.label
      """;

  private final JdbcClient jdbc;
  private final LabelAddress address;

  Bearers(JdbcClient jdbc, LabelAddress address) {
    this.jdbc = jdbc;
    this.address = address;
  }

  /** The trays of a sticking run, in bench order. */
  public List<Bearer> ofRun(String code) {
    return where("r.code = ?", code);
  }

  /** The trays of a batch, in bench order. */
  public List<Bearer> ofBatch(String code) {
    return where("b.code = ?", code);
  }

  /** The plants that stand in a lot with a number of their own. */
  public List<Bearer> ofLot(String label) {
    return where("lu.label_key = ?", CodeKey.of(label));
  }

  /** One thing by its label; none or one. */
  public List<Bearer> of(String label) {
    return where("u.label_key = ?", CodeKey.of(label));
  }

  private List<Bearer> where(String condition, String code) {
    return jdbc.sql(QUERY.formatted(condition)).param(code).query(Bearer.class).list();
  }

  /** The label of what bears one. */
  public Label label(Bearer bearer) {
    return new Label(address.payload(bearer.code()), bearer.code(), bearer.lines());
  }
}
