package trialwood.exchange.sheet;

import org.springframework.stereotype.Component;
import trialwood.exchange.Column;
import trialwood.exchange.Known;
import trialwood.exchange.Rows;
import trialwood.exchange.Sheet;
import trialwood.trial.EntryRole;
import trialwood.trial.TrialPlanting;

/** What stands in each trial, and what for. */
@Component
class TrialEntrySheet extends Sheet {

  private static final Column<String> TRIAL = Column.code("trial", Known.TRIAL, "the trial").key();
  private static final Column<String> ACCESSION =
      Column.code("accession", Known.ACCESSION, "what stands in it").key();
  private static final Column<EntryRole> ROLE =
      Column.choice("role", EntryRole.class, "a candidate, or which check").required();

  private final TrialPlanting planting;

  TrialEntrySheet(TrialPlanting planting) {
    super(61, "trial-entries", TRIAL, ACCESSION, ROLE);
    this.planting = planting;
  }

  @Override
  protected void apply(Rows rows) {
    rows.each(row -> planting.enter(row.id(TRIAL), row.id(ACCESSION), row.the(ROLE)));
  }

  @Override
  protected String query() {
    return """
        select t.code, a.code, e.role
        from trial_entry e
          join trial t on t.id = e.trial_id
          join accession a on a.id = e.accession_id
        order by e.id
        """;
  }
}
