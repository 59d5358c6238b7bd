package trialwood.propagation;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import trialwood.crop.LookDays;
import trialwood.evidence.DueWork;
import trialwood.evidence.WorkSource;

/** Trays that are due to be looked at or closed, from the crop's look days. */
@Component
public class TrayWork implements WorkSource {

  private final JdbcClient jdbc;

  TrayWork(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  /** A tray that nobody has closed yet. */
  record OpenTray(
      String tray,
      String accession,
      @Nullable String bench,
      LocalDate stuckOn,
      String lookDays,
      @Nullable LocalDate lastLook) {

    /** The earliest look that has come due and was not taken. */
    Optional<LocalDate> due(LocalDate today) {
      return LookDays.of(lookDays).days().stream()
          .map(stuckOn::plusDays)
          .filter(day -> lastLook == null || day.isAfter(lastLook))
          .findFirst()
          .filter(day -> !day.isAfter(today));
    }

    /** After the last look day the tray waits to be closed. */
    boolean awaitsFinalCount(LocalDate today) {
      return !stuckOn.plusDays(LookDays.of(lookDays).last()).isAfter(today);
    }

    DueWork work(LocalDate due, LocalDate today) {
      long day = today.toEpochDay() - stuckOn.toEpochDay();
      boolean closing = awaitsFinalCount(today);
      return new DueWork(
          Objects.requireNonNullElse(bench, "bench"),
          due,
          (closing ? "Close tray " : "Look at tray ") + tray,
          "%s, day %d after sticking".formatted(accession, day),
          "/bench/trays/" + tray + (closing ? "/final-count" : "/look"));
    }
  }

  @Override
  public List<DueWork> due(LocalDate today) {
    return open().stream()
        .flatMap(tray -> tray.due(today).map(due -> tray.work(due, today)).stream())
        .toList();
  }

  private List<OpenTray> open() {
    return jdbc.sql(
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
              and t.stuck + coalesce((select sum(x.cuttings) from tray_change x where x.tray_id = t.unit_id), 0) > 0
              and not exists (select 1 from tray_ruling v where v.tray_id = t.unit_id and not v.counts)
            order by r.from_date, length(t.block), t.block, length(t.place), t.place, u.label
            """)
        .query(OpenTray.class)
        .list();
  }
}
