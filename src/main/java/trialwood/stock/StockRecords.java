package trialwood.stock;

import java.time.Clock;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import trialwood.record.Check;
import trialwood.record.CodeKey;
import trialwood.record.Recorded;
import trialwood.record.Recorder;
import trialwood.record.Refused;
import trialwood.unit.Identity;
import trialwood.unit.Tie;
import trialwood.unit.Unit;
import trialwood.unit.UnitKind;
import trialwood.unit.Units;
import trialwood.web.Measures;

/** Keeps stock plants and what happens to them. */
@Service
public class StockRecords {

  private final StockPlants plants;
  private final StockEvents events;
  private final Units units;
  private final Identity identity;
  private final Recorder recorder;
  private final JdbcClient jdbc;
  private final Clock clock;

  StockRecords(
      StockPlants plants,
      StockEvents events,
      Units units,
      Identity identity,
      Recorder recorder,
      JdbcClient jdbc,
      Clock clock) {
    this.plants = plants;
    this.events = events;
    this.units = units;
    this.identity = identity;
    this.recorder = recorder;
    this.jdbc = jdbc;
    this.clock = clock;
  }

  /**
   * Keeps a plant for cuttings and ties it to its accession from that day.
   *
   * @return the plant's unit
   * @throws Refused when the label is taken or a living plant of the accession bears the number
   */
  @Transactional
  public UUID keep(NewStockPlant said) {
    refuseTomorrow("since", said.since());
    Check.that()
        .holds(
            !units.existsByLabelKey(CodeKey.of(said.label())),
            "label",
            "The label %s is taken.".formatted(said.label().strip()))
        .orRefuse();
    refuseSecond(said);
    Recorded recorded = recorder.by(said.personId());
    UUID unit =
        Objects.requireNonNull(
            units.saveAndFlush(new Unit(UnitKind.STOCK, said.label(), null)).id());
    plants.saveAndFlush(new StockPlant(unit, said, recorded));
    identity.say(
        new Tie(
            unit,
            said.accessionId(),
            said.since(),
            null,
            "kept for cuttings",
            null,
            said.since(),
            recorded));
    return unit;
  }

  /** Two people giving one number at once: the second waits here, and is then refused. */
  private void refuseSecond(NewStockPlant said) {
    jdbc.sql("select id from accession where id = :id for update")
        .param("id", said.accessionId())
        .query(UUID.class)
        .list();
    Optional<String> bearer =
        jdbc.sql(
                """
                select min(u.label)
                from stock_plant p
                join unit u on u.id = p.unit_id
                join holding h on h.unit_id = p.unit_id and h.accession_id = :accession
                  and h.until_date > :since
                where p.number = :number and not exists (
                  select 1 from stock_event d
                  where d.stock_id = p.unit_id and d.kind = 'DIED' and d.on_date <= :since
                    and not exists (select 1 from stock_event later
                                    where later.supersedes_id = d.id))
                """)
            .param("accession", said.accessionId())
            .param("number", said.number())
            .param("since", said.since())
            .query(String.class)
            .optional();
    bearer.ifPresent(
        label -> {
          throw new Refused(
              "number",
              "%s bears number %d and lives, by the record.".formatted(label, said.number()));
        });
  }

  /**
   * Keeps what happened to a plant.
   *
   * @throws Refused when it is impossible, as when the plant was dead before
   */
  @Transactional
  public void happened(UUID stockId, NewStockEvent said) {
    StockPlant plant = locked(stockId);
    refuseTomorrow("on", said.on());
    refuseAfterDeath(stockId, said, null);
    events.saveAndFlush(new StockEvent(plant, said, recorder.by(said.personId())));
  }

  /** Puts what happened in the place of an earlier record of its kind; both stay readable. */
  @Transactional
  public void correct(UUID earlierId, NewStockEvent said, String reason) {
    StockEvent earlier =
        events
            .findById(earlierId)
            .orElseThrow(() -> new Refused("record", "No such record is kept."));
    StockPlant plant = locked(earlier.stockId());
    refuseTomorrow("on", said.on());
    refuseAfterDeath(earlier.stockId(), said, earlierId);
    Check.that()
        .holds(
            !events.existsBySupersedesId(earlierId),
            "supersedeReason",
            "This record was replaced before.")
        .orRefuse();
    events.saveAndFlush(
        new StockEvent(plant, said, recorder.by(said.personId())).insteadOf(earlierId, reason));
  }

  private StockPlant locked(UUID stockId) {
    jdbc.sql("select unit_id from stock_plant where unit_id = :id for update")
        .param("id", stockId)
        .query(UUID.class)
        .list();
    return plants
        .findById(stockId)
        .orElseThrow(() -> new Refused("plant", "This stock plant is not on record."));
  }

  private void refuseAfterDeath(UUID stockId, NewStockEvent said, @Nullable UUID replaced) {
    boolean dies = said.kind() == StockEvent.Kind.DIED;
    events.standing(stockId).stream()
        .filter(it -> it.kind() == StockEvent.Kind.DIED && !Objects.equals(it.id(), replaced))
        .filter(it -> dies || said.on().isAfter(it.onDate()))
        .findFirst()
        .ifPresent(
            death -> {
              throw new Refused(
                  "on", "It was recorded dead on %s.".formatted(Measures.day(death.onDate())));
            });
  }

  private void refuseTomorrow(String field, LocalDate day) {
    if (day.isAfter(LocalDate.now(clock))) {
      throw new Refused(
          field, "%s lies ahead; records are of what was done.".formatted(Measures.day(day)));
    }
  }
}
