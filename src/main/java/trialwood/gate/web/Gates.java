package trialwood.gate.web;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import trialwood.candidate.Stage;
import trialwood.web.NotFound;

/** The six gates and who waits at them. */
@Component
class Gates {

  private final JdbcClient jdbc;

  Gates(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  /**
   * One gate in the list.
   *
   * @param waiting active candidates
   * @param onHold candidates held at it
   */
  record Row(Stage gate, String title, long waiting, long onHold) {}

  private record Count(Stage stage, String standing, long number) {}

  /** The gates in the order in which candidates come to them. */
  List<Row> all() {
    Map<Stage, Long> active = new EnumMap<>(Stage.class);
    Map<Stage, Long> held = new EnumMap<>(Stage.class);
    jdbc.sql(
            """
            select stage, standing, count(*) as number from candidate
            where standing in ('ACTIVE', 'ON_HOLD') group by stage, standing
            """)
        .query(Count.class)
        .list()
        .forEach(row -> (row.standing.equals("ACTIVE") ? active : held).put(row.stage, row.number));
    List<Row> rows = new ArrayList<>();
    for (Stage gate : Stage.values()) {
      if (gate != Stage.RELEASED) {
        long waiting = active.getOrDefault(gate, 0L);
        rows.add(new Row(gate, title(gate), waiting, held.getOrDefault(gate, 0L)));
      }
    }
    return rows;
  }

  /** The gate an address names. */
  static Stage named(String key) {
    return Stage.of(key).filter(stage -> stage != Stage.RELEASED).orElseThrow(NotFound.of("gate"));
  }

  /** Propagation → container #1. */
  static String title(Stage gate) {
    String from = gate.word();
    return Character.toUpperCase(from.charAt(0)) + from.substring(1) + " → " + gate.next().word();
  }
}
