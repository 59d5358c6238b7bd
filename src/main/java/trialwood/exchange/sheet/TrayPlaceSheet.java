package trialwood.exchange.sheet;

import java.time.LocalDate;
import org.springframework.stereotype.Component;
import trialwood.exchange.Column;
import trialwood.exchange.Known;
import trialwood.exchange.Rows;
import trialwood.exchange.Sheet;
import trialwood.propagation.TrayPlace;
import trialwood.propagation.TrayPlaces;
import trialwood.record.Recorder;

/** Trays that were set on another place than the one they were stuck on. */
@Component
class TrayPlaceSheet extends Sheet {

  private static final Column<String> TRAY = Column.code("tray", Known.TRAY, "its label").key();
  private static final Column<LocalDate> FROM =
      Column.past("from", "the day from which it stands there").key();
  private static final Column<String> BENCH = Column.code("bench", Known.BENCH, "the bench").key();
  private static final Column<Integer> PLACE = Column.count("place", "place along the bench").key();
  private static final Column<String> REASON =
      Column.text("reason", 300, "why it stands there").required();
  private static final Column<String> BY =
      Column.code("by", Known.PERSON, "initials of who did it");

  private final TrayPlaces places;
  private final Recorder recorder;

  TrayPlaceSheet(TrayPlaces places, Recorder recorder) {
    super(39, "tray-places", TRAY, FROM, BENCH, PLACE, REASON, BY);
    this.places = places;
    this.recorder = recorder;
  }

  @Override
  protected void apply(Rows rows) {
    rows.each(
        row ->
            places.save(
                new TrayPlace(
                    row.id(TRAY),
                    row.id(BENCH),
                    row.the(PLACE),
                    row.the(FROM),
                    row.the(REASON),
                    recorder.by(row.maybeId(BY)))));
  }

  @Override
  protected String query() {
    return """
        select u.label, p.from_date, b.code, p.place, p.reason, w.initials
        from tray_place p
          join unit u on u.id = p.tray_id
          join bench b on b.id = p.bench_id
          left join person w on w.id = p.person_id
        order by p.id
        """;
  }
}
