package trialwood.container.web;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** What is known of the numbered plants of lots, each part one statement. */
@Component
class PlantBook {

  private final JdbcClient jdbc;

  PlantBook(JdbcClient jdbc) {
    this.jdbc = jdbc;
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
   * A number that was measured on a plant of a lot before it left the lot, the last of its day.
   *
   * @param here whether it stood in the lot by then
   */
  record Measured(
      UUID lotId, UUID plantId, UUID traitId, LocalDate onDate, BigDecimal number, boolean here) {}

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

  /**
   * Every number of every trait on the plants of these lots until they left them, one a plant,
   * trait and day.
   */
  List<Measured> measured(Collection<UUID> lots) {
    return jdbc.sql(
            """
            select v.lot_id, v.plant_id, v.trait_id, v.on_date, v.number, v.here
            from (
              select w.lot_id, o.unit_id as plant_id, o.trait_id, o.on_date,
                     o.number_value as number, o.on_date >= w.from_date as here,
                     row_number() over (partition by w.lot_id, o.unit_id, o.trait_id, o.on_date
                                        order by o.recorded_at desc) as place
              from plant_place w
              join observation o on o.unit_id = w.plant_id
              where w.lot_id in (:lots) and o.number_value is not null
                and not exists (select 1 from plant_place later
                                where later.plant_id = w.plant_id
                                  and later.from_date > w.from_date
                                  and later.from_date <= o.on_date)
                and not exists (select 1 from observation later where later.supersedes_id = o.id)
            ) v
            where v.place = 1
            order by v.lot_id, v.plant_id, v.on_date
            """)
        .param("lots", lots)
        .query(Measured.class)
        .list();
  }
}
