package trialwood.exchange.sheet;

import java.time.LocalDate;
import org.springframework.stereotype.Component;
import trialwood.dossier.Filing;
import trialwood.dossier.Filings;
import trialwood.exchange.Column;
import trialwood.exchange.Known;
import trialwood.exchange.Row;
import trialwood.exchange.Rows;
import trialwood.exchange.Sheet;
import trialwood.record.Recorder;

/** Applications that were filed. */
@Component
class FilingSheet extends Sheet {

  private static final Column<String> ACCESSION =
      Column.code("accession", Known.CANDIDATE, "the candidate").key();
  private static final Column<String> ROUTE =
      Column.code("route", Known.FILING_ROUTE, "the route it was filed on").key();
  private static final Column<LocalDate> ON = Column.past("on", "the day of filing").key();
  private static final Column<String> NUMBER = Column.text("number", 60, "file number").telling();
  private static final Column<String> NOTE = Column.note();
  private static final Column<String> BY = Column.by();

  private final Filings filings;
  private final Recorder recorder;

  FilingSheet(Filings filings, Recorder recorder) {
    super(71, "filings", ACCESSION, ROUTE, ON, NUMBER, NOTE, BY);
    this.filings = filings;
    this.recorder = recorder;
  }

  @Override
  protected void apply(Rows rows) {
    rows.each(row -> filings.save(filing(row)));
  }

  private Filing filing(Row row) {
    return new Filing(
        row.id(ACCESSION),
        row.id(ROUTE),
        row.the(ON),
        row.maybe(NUMBER),
        row.maybe(NOTE),
        recorder.by(row.id(BY)));
  }

  @Override
  protected String query() {
    return """
        select a.code, r.code, f.on_date, f.number, f.note, w.initials
        from filing f
          join accession a on a.id = f.accession_id
          join filing_route r on r.id = f.route_id
          left join person w on w.id = f.person_id
        where not f.struck_out and not exists (select 1 from filing n where n.supersedes_id = f.id)
        order by f.id
        """;
  }
}
