package trialwood.exchange.sheet;

import java.time.LocalDate;
import org.springframework.stereotype.Component;
import trialwood.exchange.Column;
import trialwood.exchange.Known;
import trialwood.exchange.Rows;
import trialwood.exchange.Sheet;
import trialwood.trial.TrialPlanting;

/** Where each trial stands. */
@Component
class TrialSiteSheet extends Sheet {

  private static final Column<String> TRIAL = Column.code("trial", Known.TRIAL, "the trial").key();
  private static final Column<String> SITE = Column.code("site", Known.SITE, "the site").key();
  private static final Column<LocalDate> PLANTED_ON =
      Column.past("planted_on", "the day it was planted there").required();

  private final TrialPlanting planting;

  TrialSiteSheet(TrialPlanting planting) {
    super(62, "trial-sites", TRIAL, SITE, PLANTED_ON);
    this.planting = planting;
  }

  @Override
  protected void apply(Rows rows) {
    rows.each(row -> planting.standAt(row.id(TRIAL), row.id(SITE), row.the(PLANTED_ON)));
  }

  @Override
  protected String query() {
    return """
        select t.code, s.code, p.planted_on
        from trial_site p join trial t on t.id = p.trial_id join site s on s.id = p.site_id
        order by p.id
        """;
  }
}
