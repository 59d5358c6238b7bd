package trialwood.propagation;

import java.util.Map;
import java.util.TreeMap;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What the steps of a crop's root score mean, in its own words. */
@Repository
public class RootScale {

  /** Common practice, no source: the words while a crop has none of its own. */
  private static final Map<Integer, String> USUAL =
      Map.of(
          0, "dead or rotten",
          1, "alive, no callus",
          2, "alive, callus only",
          3, "1 to 3 roots, or on one side",
          4, "4 or more roots, two sides",
          5, "roots all round, plug lifts whole");

  private final JdbcClient jdbc;

  RootScale(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  /**
   * Step and meaning, ascending; the crop's score that is taken on trays, in its newest wording.
   */
  public Map<Integer, String> of(String run) {
    Map<Integer, String> steps = new TreeMap<>();
    jdbc.sql(
            """
            select s.step, s.meaning
            from trait_step s
            join trait t on t.id = s.trait_id
            join sticking_run r on r.crop_id = t.crop_id
            where r.code = :run and t.kind = 'SCORE' and t.taken_on = 'tray' and s.step between 0 and 5
            order by s.scale, s.step
            """)
        .param("run", run)
        .query(
            rows -> {
              steps.put(rows.getInt("step"), rows.getString("meaning"));
            });
    return steps.isEmpty() ? new TreeMap<>(USUAL) : steps;
  }
}
