package trialwood.propagation;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import trialwood.crop.LookDays;
import trialwood.evidence.DueWork;
import trialwood.evidence.WorkKind;
import trialwood.evidence.WorkSource;

/** The look days that are still to come for trays nobody has closed yet. */
@Component
class ComingLooks implements WorkSource {

  private final JdbcClient jdbc;

  ComingLooks(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  private record OpenTray(
      String tray,
      String accession,
      @Nullable String bench,
      LocalDate stuckOn,
      String lookDays,
      @Nullable LocalDate lastLook) {

    Stream<DueWork> between(LocalDate today, LocalDate until) {
      LookDays looks = LookDays.of(lookDays);
      return looks.days().stream()
          .filter(day -> stuckOn.plusDays(day).isAfter(today))
          .filter(day -> !stuckOn.plusDays(day).isAfter(until))
          .map(day -> work(day, day == looks.last()));
    }

    private DueWork work(int day, boolean closing) {
      WorkKind kind = closing ? TrayWork.FINAL_COUNTS : TrayWork.LOOKS;
      return kind.at(
              Objects.requireNonNullElse(bench, "bench"),
              stuckOn.plusDays(day),
              (closing ? "Close tray " : "Look at tray ") + tray,
              "%s, day %d after sticking".formatted(accession, day),
              "/bench/trays/" + tray + (closing ? "/final-count" : "/look"))
          .readAt("/bench/trays/" + tray)
          .begun(lastLook != null);
    }
  }

  @Override
  public List<DueWork> due(LocalDate today) {
    return List.of();
  }

  @Override
  public List<DueWork> coming(LocalDate today, LocalDate until) {
    return jdbc
        .sql(
            """
            select u.label as tray, a.code as accession, r.bench, t.stuck_on, crop.look_days,
                   (select max(l.on_date) from tray_look l
                    where l.tray_id = t.unit_id
                      and not exists (select 1 from tray_look s where s.supersedes_id = l.id)) as last_look
            from tray t
            join unit u on u.id = t.unit_id
            join batch b on b.id = t.batch_id
            join sticking_run r on r.id = b.run_id
            join crop on crop.id = r.crop_id
            join holding h on h.unit_id = t.unit_id and h.from_date <= t.stuck_on and t.stuck_on < h.until_date
            join accession a on a.id = h.accession_id
            where not exists (select 1 from final_count f where f.tray_id = t.unit_id)
              and not exists (select 1 from tray_ruling v where v.tray_id = t.unit_id and not v.counts)
            order by r.from_date, length(t.block), t.block, length(t.place), t.place, u.label
            """)
        .query(OpenTray.class)
        .list()
        .stream()
        .flatMap(tray -> tray.between(today, until))
        .toList();
  }
}
