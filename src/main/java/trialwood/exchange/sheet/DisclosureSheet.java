package trialwood.exchange.sheet;

import java.time.LocalDate;
import org.springframework.stereotype.Component;
import trialwood.dossier.Disclosure;
import trialwood.dossier.Disclosures;
import trialwood.exchange.Column;
import trialwood.exchange.Known;
import trialwood.exchange.Row;
import trialwood.exchange.Rows;
import trialwood.exchange.Sheet;
import trialwood.record.Recorder;

/** What left the nursery's own hands or was shown to others. */
@Component
class DisclosureSheet extends Sheet {

  private static final Column<String> ACCESSION =
      Column.code("accession", Known.CANDIDATE, "the candidate").key();
  private static final Column<LocalDate> ON = Column.past("on", "the day it happened").key();
  private static final Column<Disclosure.Kind> KIND =
      Column.choice("kind", Disclosure.Kind.class, "what was done").key();
  private static final Column<String> TERRITORY =
      Column.text("territory", 40, "where, as the filing routes name it").key();
  private static final Column<Integer> NUMBER =
      Column.count("number", "plants, where counted").telling();
  private static final Column<String> AGREEMENT =
      Column.text("agreement", 80, "number or name of the paper; empty where there was none")
          .telling();
  private static final Column<String> TO_WHOM =
      Column.text("to_whom", 120, "who has them now").telling();
  private static final Column<LocalDate> LEARNED_ON =
      Column.past("learned_on", "the day it became known, where that was later");
  private static final Column<String> NOTE = Column.note().telling();
  private static final Column<String> BY = Column.by();

  private final Disclosures disclosures;
  private final Recorder recorder;

  DisclosureSheet(Disclosures disclosures, Recorder recorder) {
    super(
        70,
        "disclosures",
        ACCESSION,
        ON,
        KIND,
        TERRITORY,
        NUMBER,
        AGREEMENT,
        TO_WHOM,
        LEARNED_ON,
        NOTE,
        BY);
    this.disclosures = disclosures;
    this.recorder = recorder;
  }

  @Override
  protected void apply(Rows rows) {
    rows.each(row -> disclosures.save(disclosure(row)));
  }

  private Disclosure disclosure(Row row) {
    return new Disclosure(
        row.id(ACCESSION),
        row.the(ON),
        row.the(KIND),
        row.the(TERRITORY),
        row.maybe(NUMBER),
        row.maybe(AGREEMENT),
        row.maybe(TO_WHOM),
        row.maybe(LEARNED_ON),
        row.maybe(NOTE),
        recorder.by(row.id(BY)));
  }

  @Override
  protected String query() {
    return """
        select a.code, d.on_date, d.kind, d.territory, d.number, d.agreement, d.to_whom,
               d.learned_on, d.note, w.initials
        from disclosure d
          join accession a on a.id = d.accession_id
          left join person w on w.id = d.person_id
        where not d.struck_out and not exists (select 1 from disclosure n where n.supersedes_id = d.id)
        order by d.id
        """;
  }
}
