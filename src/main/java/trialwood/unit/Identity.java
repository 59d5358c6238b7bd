package trialwood.unit;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Whose plant each unit is, from what people say of it. */
@Service
public class Identity {

  private static final int CHUNK = 500;

  private final Ties ties;
  private final Doubts doubts;
  private final JdbcClient jdbc;
  private final JdbcTemplate batches;

  Identity(Ties ties, Doubts doubts, JdbcClient jdbc, JdbcTemplate batches) {
    this.ties = ties;
    this.doubts = doubts;
    this.jdbc = jdbc;
    this.batches = batches;
  }

  /** Adds one saying; see {@link #say(List)}. */
  @Transactional
  public void say(Tie tie) {
    say(List.of(tie));
  }

  /**
   * Adds sayings, in the order given, and settles their units anew. No record is touched: every
   * query reads through what holds on its own date. A question between two units that are of one
   * accession from now on is answered by it.
   */
  @Transactional
  public void say(List<Tie> sayings) {
    List<UUID> units = List.copyOf(Ties.unitsOf(sayings));
    for (int from = 0; from < units.size(); from += CHUNK) {
      lock(units.subList(from, Math.min(from + CHUNK, units.size())));
    }
    ties.saveAllAndFlush(sayings);
    for (int from = 0; from < units.size(); from += CHUNK) {
      List<UUID> some = units.subList(from, Math.min(from + CHUNK, units.size()));
      if (settle(some)) {
        answer(doubts.agreeingNow(some), sayings.get(0));
      }
    }
  }

  private void answer(List<Doubt> agreeing, Tie word) {
    agreeing.forEach(
        doubt ->
            doubt.settledBy(
                word.correctionId(),
                "They agree since the labels were put right.",
                word.recorded()));
    doubts.saveAll(agreeing);
  }

  /** Whose a unit is from now on, as far as anybody said. */
  public Optional<UUID> holder(UUID unit) {
    return jdbc.sql("select accession_id from holding where unit_id = :unit and until_date = :open")
        .param("unit", unit)
        .param("open", Holding.OPEN)
        .query(UUID.class)
        .optional();
  }

  /** Two people correcting one unit at once would each settle without the other's word. */
  private void lock(Collection<UUID> units) {
    jdbc.sql("select id from unit where id in (:units) order by id for update")
        .param("units", units)
        .query(UUID.class)
        .list();
  }

  /** Answers whether one of them was settled before. */
  private boolean settle(Collection<UUID> units) {
    List<Holding> holdings =
        ties.findByUnitIdIn(units).stream()
            .collect(Collectors.groupingBy(Tie::unitId))
            .values()
            .stream()
            .flatMap(sayings -> Holding.settle(sayings).stream())
            .toList();
    int before =
        jdbc.sql("delete from holding where unit_id in (:units)").param("units", units).update();
    batches.batchUpdate(
        "insert into holding (unit_id, from_date, until_date, accession_id, tie_id)"
            + " values (?, ?, ?, ?, ?)",
        holdings,
        CHUNK,
        (row, holding) -> {
          row.setObject(1, holding.unitId());
          row.setObject(2, holding.from());
          row.setObject(3, holding.until());
          row.setObject(4, holding.accessionId());
          row.setLong(5, holding.tieId());
        });
    return before > 0;
  }
}
