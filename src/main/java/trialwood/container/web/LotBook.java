package trialwood.container.web;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import trialwood.record.CodeKey;

/** What a lot's pages show, each part one statement. */
@Component
class LotBook {

  private final JdbcClient jdbc;

  LotBook(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  /** What stands on top of a lot's page. */
  record Head(
      UUID lotId,
      String label,
      UUID accessionId,
      String code,
      @Nullable String talkName,
      UUID cropId,
      UUID classId,
      String containerClass,
      @Nullable BigDecimal litres,
      LocalDate pottedOn,
      int potted,
      @Nullable String yard,
      @Nullable String note,
      @Nullable String initials) {}

  /** Where plants came from. */
  record Source(String label, String kind, int number) {
    public boolean isLot() {
      return kind.equals("LOT");
    }
  }

  /**
   * A count, a loss or plants that left.
   *
   * @param reason why it takes the place of an earlier record, where it does
   */
  record Happened(
      UUID id,
      LocalDate onDate,
      String what,
      int number,
      @Nullable Integer saleable,
      @Nullable String words,
      @Nullable String initials,
      @Nullable String reason,
      boolean replaced) {

    public boolean isCount() {
      return what.equals("COUNTED");
    }

    public boolean isLoss() {
      return what.equals("LOST");
    }

    public String word() {
      return what.toLowerCase(Locale.ROOT);
    }
  }

  /** A check's lot of the same class and season, at its last count. */
  record CheckLot(
      UUID lotId,
      String label,
      String code,
      String role,
      int potted,
      @Nullable LocalDate counted,
      @Nullable Integer alive,
      @Nullable Integer saleable) {

    public String roleWord() {
      return role.toLowerCase(Locale.ROOT) + " check";
    }
  }

  /** A numbered plant where it stands. */
  record Standing(UUID plantId, String label, int number) {}

  /** The last value of a trait on a plant while it stood in a lot. */
  record Value(
      UUID lotId,
      UUID plantId,
      String plant,
      int plantNumber,
      UUID traitId,
      LocalDate onDate,
      @Nullable BigDecimal number,
      @Nullable String noneBecause) {}

  /**
   * What was seen on a plant, with what was replaced.
   *
   * @param reason why it takes the place of an earlier value, where it does
   */
  record Noted(
      UUID id,
      String trait,
      @Nullable String unit,
      int decimals,
      LocalDate onDate,
      @Nullable BigDecimal number,
      @Nullable String words,
      @Nullable String noneBecause,
      @Nullable String note,
      @Nullable String initials,
      @Nullable String reason,
      boolean replaced) {

    public @Nullable String none() {
      return noneBecause == null ? null : noneBecause.toLowerCase(Locale.ROOT).replace('_', ' ');
    }
  }

  Optional<Head> head(String label) {
    return jdbc.sql(
            """
            select l.unit_id as lot_id, u.label, a.id as accession_id, a.code, a.talk_name,
                   a.crop_id, k.id as class_id, k.code as container_class, l.litres, l.potted_on,
                   l.potted, l.yard, l.note, p.initials
            from lot l
            join unit u on u.id = l.unit_id
            join container_class k on k.id = l.container_class_id
            join holding h on h.unit_id = l.unit_id and h.until_date = (
              select max(last.until_date) from holding last where last.unit_id = l.unit_id)
            join accession a on a.id = h.accession_id
            left join person p on p.id = l.person_id
            where u.label_key = :key
            """)
        .param("key", CodeKey.of(label))
        .query(Head.class)
        .optional();
  }

  List<Source> sources(UUID lot) {
    return jdbc.sql(
            """
            select u.label, u.kind, s.number
            from lot_source s join unit u on u.id = s.source_id
            where s.lot_id = :lot order by u.label
            """)
        .param("lot", lot)
        .query(Source.class)
        .list();
  }

  List<Happened> happened(UUID lot) {
    return jdbc.sql(
            """
            select x.id, x.on_date, x.what, x.number, x.saleable, x.words, p.initials, x.reason,
                   x.replaced
            from (
              select c.id, c.on_date, 'COUNTED' as what, c.alive as number, c.saleable, c.note as words,
                     c.person_id, c.recorded_at, c.supersede_reason as reason,
                     exists (select 1 from lot_count y where y.supersedes_id = c.id) as replaced
              from lot_count c where c.lot_id = :lot
              union all
              select c.id, c.on_date, 'LOST', c.number, cast(null as integer), c.reason,
                     c.person_id, c.recorded_at, c.supersede_reason,
                     exists (select 1 from lot_loss y where y.supersedes_id = c.id)
              from lot_loss c where c.lot_id = :lot
              union all
              select c.id, c.on_date, c.way, c.number, cast(null as integer),
                     coalesce(c.to_whom, c.purpose), c.person_id, c.recorded_at, c.supersede_reason,
                     exists (select 1 from lot_outgoing y where y.supersedes_id = c.id)
              from lot_outgoing c where c.lot_id = :lot
            ) x
            left join person p on p.id = x.person_id
            order by x.on_date, x.recorded_at
            """)
        .param("lot", lot)
        .query(Happened.class)
        .list();
  }

  List<CheckLot> checksBeside(Head lot) {
    return jdbc.sql(
            """
            select l.unit_id as lot_id, u.label, a.code, k.role, l.potted, c.on_date as counted,
                   c.alive, c.saleable
            from crop_check k
            join accession a on a.id = k.accession_id
            join holding h on h.accession_id = a.id
            join lot l on l.unit_id = h.unit_id
              and h.from_date <= l.potted_on and h.until_date > l.potted_on
            join unit u on u.id = l.unit_id
            left join (select x.lot_id, x.on_date, x.alive, x.saleable,
                              row_number() over (partition by x.lot_id
                                order by x.on_date desc, x.recorded_at desc) as place
                       from lot_count x
                       where not exists (select 1 from lot_count later
                                         where later.supersedes_id = x.id)
                      ) c on c.lot_id = l.unit_id and c.place = 1
            where k.crop_id = :crop and l.container_class_id = :class and l.unit_id <> :lot
              and l.potted_on >= :newYear and l.potted_on < :nextYear
            order by u.label
            """)
        .param("crop", lot.cropId())
        .param("class", lot.classId())
        .param("lot", lot.lotId())
        .param("newYear", lot.pottedOn().withDayOfYear(1))
        .param("nextYear", lot.pottedOn().withDayOfYear(1).plusYears(1))
        .query(CheckLot.class)
        .list();
  }

  List<Standing> plants(UUID lot, LocalDate day) {
    return jdbc.sql(
            """
            select w.plant_id, u.label, p.number
            from plant_place w
            join plant p on p.unit_id = w.plant_id
            join unit u on u.id = w.plant_id
            where w.lot_id = :lot and w.from_date <= :day
              and not exists (select 1 from plant_place later
                              where later.plant_id = w.plant_id
                                and later.from_date > w.from_date and later.from_date <= :day)
            order by p.number, u.label
            """)
        .param("lot", lot)
        .param("day", day)
        .query(Standing.class)
        .list();
  }

  /** Everything seen on a plant, by trait and day, wherever it stood. */
  List<Noted> noted(UUID plant) {
    return jdbc.sql(
            """
            select o.id, t.name as trait, t.unit, t.decimals, o.on_date, o.number_value as number,
                   coalesce(o.text_value, cast(o.date_value as varchar(10))) as words,
                   o.none_because, o.note, p.initials, o.supersede_reason as reason,
                   exists (select 1 from observation y where y.supersedes_id = o.id) as replaced
            from observation o
            join trait t on t.id = o.trait_id
            left join person p on p.id = o.person_id
            where o.unit_id = :plant
            order by t.name, o.on_date, o.recorded_at
            """)
        .param("plant", plant)
        .query(Noted.class)
        .list();
  }

  List<Value> values(Collection<UUID> lots) {
    return jdbc.sql(
            """
            select v.lot_id, v.plant_id, v.plant, v.plant_number, v.trait_id, v.on_date, v.number,
                   v.none_because
            from (
              select w.lot_id, o.unit_id as plant_id, u.label as plant, p.number as plant_number,
                     o.trait_id, o.on_date, o.number_value as number, o.none_because,
                     row_number() over (partition by w.lot_id, o.unit_id, o.trait_id
                                        order by o.on_date desc, o.recorded_at desc) as place
              from plant_place w
              join observation o on o.unit_id = w.plant_id and o.on_date >= w.from_date
              join plant p on p.unit_id = o.unit_id
              join unit u on u.id = o.unit_id
              where w.lot_id in (:lots)
                and not exists (select 1 from plant_place later
                                where later.plant_id = w.plant_id
                                  and later.from_date > w.from_date
                                  and later.from_date <= o.on_date)
                and not exists (select 1 from observation later where later.supersedes_id = o.id)
            ) v
            where v.place = 1
            order by v.plant_number, v.plant
            """)
        .param("lots", lots)
        .query(Value.class)
        .list();
  }
}
