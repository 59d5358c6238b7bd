package trialwood.exchange.sheet;

import java.time.LocalDate;
import org.springframework.stereotype.Component;
import trialwood.exchange.Column;
import trialwood.exchange.Known;
import trialwood.exchange.Row;
import trialwood.exchange.Rows;
import trialwood.exchange.Sheet;
import trialwood.gate.Attestation;
import trialwood.gate.Attestations;
import trialwood.record.Recorder;

/** What people say of candidates where no record can. */
@Component
class AttestationSheet extends Sheet {

  private static final Column<String> ACCESSION =
      Column.code("accession", Known.CANDIDATE, "the candidate").key();
  private static final Column<String> CRITERION =
      Column.text("criterion", 40, "code of the criterion it answers").key();
  private static final Column<LocalDate> ON = Column.past("on", "the day it was said").key();
  private static final Column<Boolean> HOLDS = Column.yesNo("holds", "whether it holds").required();
  private static final Column<LocalDate> EXPIRES_ON =
      Column.day("expires_on", "first day on which it no longer counts");
  private static final Column<String> NOTE =
      Column.text("note", 300, "what was seen, or where the paper lies").required();
  private static final Column<String> BY = Column.by();

  private final Attestations attestations;
  private final Recorder recorder;

  AttestationSheet(Attestations attestations, Recorder recorder) {
    super(72, "attestations", ACCESSION, CRITERION, ON, HOLDS, EXPIRES_ON, NOTE, BY);
    this.attestations = attestations;
    this.recorder = recorder;
  }

  @Override
  protected void apply(Rows rows) {
    rows.each(row -> attestations.save(attestation(row)));
  }

  private Attestation attestation(Row row) {
    return new Attestation(
        row.id(ACCESSION),
        row.the(CRITERION),
        row.the(ON),
        row.the(HOLDS),
        row.maybe(EXPIRES_ON),
        row.the(NOTE),
        recorder.by(row.id(BY)));
  }

  @Override
  protected String query() {
    return """
        select a.code, t.criterion, t.on_date, t.holds, t.expires_on, t.note, w.initials
        from attestation t
          join accession a on a.id = t.accession_id
          left join person w on w.id = t.person_id
        where not exists (select 1 from attestation n where n.supersedes_id = t.id)
        order by t.id
        """;
  }
}
