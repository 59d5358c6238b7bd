package trialwood.house.web;

import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** What the pages of the houses show. */
@Component
class HouseBook {

  private static final int NEWEST = 60;

  private final JdbcClient jdbc;
  private final Clock clock;

  HouseBook(JdbcClient jdbc, Clock clock) {
    this.jdbc = jdbc;
    this.clock = clock;
  }

  /**
   * @param closedUntil nobody goes in before; absent where it is open
   * @param airCelsius with {@code mediumCelsius} as last read
   */
  record HouseLine(
      String name,
      boolean propagates,
      @Nullable Instant closedUntil,
      @Nullable Instant sprayedAt,
      @Nullable Instant readAt,
      @Nullable Double airCelsius,
      @Nullable Double mediumCelsius) {}

  /**
   * An entry of a log.
   *
   * @param kind {@code spray} or {@code reading}
   * @param until of a spray: nobody goes in before
   * @param words what was applied and where, or what was noted
   * @param replaced a later entry stands for this one
   * @param reason why it stands for an earlier one
   */
  record LogLine(
      UUID id,
      String kind,
      Instant at,
      @Nullable Instant until,
      @Nullable Integer hours,
      String words,
      @Nullable Double airCelsius,
      @Nullable Double mediumCelsius,
      @Nullable Integer humidity,
      @Nullable Integer shade,
      @Nullable Integer mistSeconds,
      @Nullable Integer mistIntervalSeconds,
      @Nullable String checked,
      @Nullable String initials,
      boolean replaced,
      @Nullable String reason) {

    public boolean spray() {
      return kind.equals("spray");
    }
  }

  List<HouseLine> houses() {
    return jdbc.sql(
            """
            select h.name, h.propagates,
                   (select max(s.re_entry_at) from house_spray s
                    where s.house_id = h.id and s.re_entry_at > :now
                      and not exists (select 1 from house_spray n where n.supersedes_id = s.id)) as closed_until,
                   (select max(s.ended_at) from house_spray s
                    where s.house_id = h.id
                      and not exists (select 1 from house_spray n where n.supersedes_id = s.id)) as sprayed_at,
                   last.read_at, last.air_celsius, last.medium_celsius
            from house h
            left join (select r.house_id, r.read_at, r.air_celsius, r.medium_celsius,
                              row_number() over (partition by r.house_id
                                                 order by r.read_at desc, r.recorded_at desc) as nth
                       from house_reading r
                       where (r.air_celsius is not null or r.medium_celsius is not null)
                         and not exists (select 1 from house_reading n where n.supersedes_id = r.id)) last
              on last.house_id = h.id and last.nth = 1
            order by h.name_key
            """)
        .param("now", OffsetDateTime.ofInstant(clock.instant(), ZoneOffset.UTC))
        .query(HouseLine.class)
        .list();
  }

  List<LogLine> log(UUID house, boolean all) {
    return jdbc.sql(
            """
            select e.*, p.initials
            from (select s.id, 'spray' as kind, s.ended_at as at, s.re_entry_at as until, s.re_entry_hours as hours,
                         s.product || coalesce(', ' || s.rate, '') || ': ' || s.area
                           || coalesce(', against ' || s.reason, '')
                           || coalesce(' (licence ' || s.licence || ')', '') as words,
                         cast(null as numeric(4, 1)) as air_celsius, cast(null as numeric(4, 1)) as medium_celsius,
                         cast(null as integer) as humidity, cast(null as integer) as shade,
                         cast(null as integer) as mist_seconds, cast(null as integer) as mist_interval_seconds,
                         s.checked, s.person_id, s.recorded_at,
                         case when exists (select 1 from house_spray n where n.supersedes_id = s.id)
                              then true else false end as replaced,
                         s.supersede_reason as reason
                  from house_spray s where s.house_id = :house
                  union all
                  select r.id, 'reading', r.read_at, null, null, coalesce(r.note, ''),
                         r.air_celsius, r.medium_celsius, r.humidity, r.shade, r.mist_seconds, r.mist_interval_seconds,
                         r.checked, r.person_id, r.recorded_at,
                         case when exists (select 1 from house_reading n where n.supersedes_id = r.id)
                              then true else false end,
                         r.supersede_reason
                  from house_reading r where r.house_id = :house) e
            left join person p on p.id = e.person_id
            order by e.at desc, e.recorded_at desc
            limit :most
            """)
        .param("house", house)
        .param("most", all ? Integer.MAX_VALUE : NEWEST)
        .query(LogLine.class)
        .list();
  }
}
