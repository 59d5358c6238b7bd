package trialwood.gate;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import trialwood.candidate.Stage;

/**
 * Who waits at a gate on a day. A candidate stands where its next decision finds it, or, when none
 * follows, where it stands now; so it stood there from its tag or its last decision on.
 */
@Repository
public class Waiting {

  private static final String PLACES =
      """
      with following as (
        select accession_id, gate,
               row_number() over (partition by accession_id order by on_date, recorded_at, id) as nearest
        from decision where on_date > :day
      ), preceding as (
        select accession_id, gate, choice, hold_until, on_date,
               row_number() over (partition by accession_id
                                  order by on_date desc, recorded_at desc, id desc) as nearest
        from decision where on_date <= :day
      ), ruled as (
        select accession_id, gate, choice,
               row_number() over (partition by accession_id, gate
                                  order by recorded_at desc, id desc) as nearest
        from decision where on_date = :day
      ), known as (
        select accession_id, min(said_on) as since from tie group by accession_id
      ), place as (
        select c.accession_id, coalesce(f.gate, c.stage) as gate,
               case when p.choice = 'HOLD' then p.hold_until end as held_until
        from candidate c
        left join following f on f.accession_id = c.accession_id and f.nearest = 1
        left join preceding p on p.accession_id = c.accession_id and p.nearest = 1
        left join known k on k.accession_id = c.accession_id
        where (p.accession_id is not null or k.since is null or k.since <= :day)
          and (f.accession_id is not null or c.standing in ('ACTIVE', 'ON_HOLD'))
          and (p.choice is null or p.choice <> 'DISCARD'
               or exists (select 1 from candidate_event e
                          where e.accession_id = c.accession_id and e.kind = 'REOPENED'
                            and e.on_date between p.on_date and :day))
      )
      """;

  private final JdbcClient jdbc;

  Waiting(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  /**
   * A candidate at a gate on a day.
   *
   * @param heldUntil when it is looked at again; none unless a hold stands
   * @param decided what was decided of it at this gate on this very day
   * @param stillHere whether it stands at the gate to this day and can be decided upon
   */
  public record AtGate(
      UUID accessionId,
      @Nullable LocalDate heldUntil,
      @Nullable Choice decided,
      boolean stillHere) {}

  /** A hold that stands on a day. */
  public record Held(String code, Stage gate, LocalDate until) {}

  /** Those who wait there on that day, and those who did until they were decided upon that day. */
  public List<AtGate> at(Stage gate, LocalDate day) {
    return jdbc.sql(
            PLACES
                + """
                select c.accession_id, p.held_until, r.choice as decided,
                       case when c.stage = :gate and c.standing in ('ACTIVE', 'ON_HOLD')
                            then true else false end as still_here
                from candidate c
                left join place p on p.accession_id = c.accession_id and p.gate = :gate
                left join ruled r
                  on r.accession_id = c.accession_id and r.gate = :gate and r.nearest = 1
                where p.accession_id is not null or r.accession_id is not null
                """)
        .param("gate", gate.name())
        .param("day", day)
        .query(AtGate.class)
        .list();
  }

  /** The holds that stand on a day and end by another, the one that ends first ahead. */
  public List<Held> held(LocalDate day, LocalDate endingBy) {
    return jdbc.sql(
            PLACES
                + """
                select a.code, p.gate, p.held_until as until
                from place p join accession a on a.id = p.accession_id
                where p.held_until <= :endingBy
                order by p.held_until, a.code
                """)
        .param("day", day)
        .param("endingBy", endingBy)
        .query(Held.class)
        .list();
  }
}
