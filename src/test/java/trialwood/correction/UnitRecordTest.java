package trialwood.correction;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import trialwood.testing.RecordTest;

/** A correction of labels names every record that it moves: none may be missing from the view. */
@RecordTest
class UnitRecordTest {

  /** Tables that name a unit and are no record of what was done to it or seen on it. */
  private static final Map<String, String> NO_RECORDS =
      Map.ofEntries(
          Map.entry("tie", "says whose the unit is: the correction itself"),
          Map.entry("holding", "is settled from the ties"),
          Map.entry("doubt", "is a question, which a correction answers"),
          Map.entry("unit", "names the unit it is a part of"),
          Map.entry("tray", "is the unit"),
          Map.entry("lot", "is the unit"),
          Map.entry("plant", "is the unit"),
          Map.entry("plot", "is the unit"),
          Map.entry("stock_plant", "is the unit"),
          Map.entry("field_tag", "is the unit's tag: it names the accession that was born there"),
          Map.entry("lot_source", "leads from unit to unit: what comes out of it is offered"),
          Map.entry("plant_place", "leads from unit to unit: what stood in it is offered"),
          Map.entry("batch", "names the plant that was cut; its trays have ties of their own"),
          Map.entry("site_event_plot", "happened to the ground, whatever was planted on it"));

  @Autowired private JdbcClient jdbc;

  @Test
  void every_record_of_a_unit_is_in_the_view_or_has_a_reason_to_be_left_out() {
    String view = view();
    assertThat(tablesThatNameAUnit())
        .hasSizeGreaterThan(20)
        .allSatisfy(
            table ->
                assertThat(view.matches("(?s).*from[\\s(]+\\W?(public\\W{1,3})?" + table + "\\b.*"))
                    .as("%s stands in the view, or among those left out", table)
                    .isNotEqualTo(NO_RECORDS.containsKey(table)));
  }

  @Test
  void nothing_is_left_out_that_is_not_there() {
    Map<String, String> stale = new TreeMap<>(NO_RECORDS);
    stale.keySet().removeAll(tablesThatNameAUnit());
    assertThat(stale).isEmpty();
  }

  private String view() {
    return jdbc.sql(
            """
            select lower(view_definition) from information_schema.views
            where lower(table_name) = 'unit_record'
            """)
        .query(String.class)
        .single();
  }

  private List<String> tablesThatNameAUnit() {
    return jdbc.sql(
            """
            select distinct lower(f.table_name) as name
            from information_schema.referential_constraints r
            join information_schema.table_constraints f
              on f.constraint_schema = r.constraint_schema and f.constraint_name = r.constraint_name
            join information_schema.table_constraints u
              on u.constraint_schema = r.unique_constraint_schema
             and u.constraint_name = r.unique_constraint_name
            where lower(u.table_name) in ('unit', 'tray', 'lot', 'plant', 'plot', 'stock_plant')
            order by name
            """)
        .query(String.class)
        .list();
  }
}
