package trialwood.exchange.sheet;

import org.springframework.stereotype.Component;
import trialwood.exchange.Column;
import trialwood.exchange.Known;
import trialwood.exchange.Rows;
import trialwood.exchange.Sheet;
import trialwood.lineage.CheckRole;
import trialwood.lineage.CropCheck;
import trialwood.lineage.CropChecks;

/** Which accessions serve a crop as checks, and for what. */
@Component
class CheckSheet extends Sheet {

  private static final Column<String> CROP = Column.code("crop", Known.CROP, "the crop").key();
  private static final Column<String> ACCESSION =
      Column.code("accession", Known.ACCESSION, "the check").key();
  private static final Column<CheckRole> ROLE =
      Column.choice("role", CheckRole.class, "what it is there for").key();

  private final CropChecks checks;

  CheckSheet(CropChecks checks) {
    super(8, "checks", CROP, ACCESSION, ROLE);
    this.checks = checks;
  }

  @Override
  protected void apply(Rows rows) {
    rows.each(row -> checks.save(new CropCheck(row.id(CROP), row.id(ACCESSION), row.the(ROLE))));
  }

  @Override
  protected String query() {
    return """
        select c.code, a.code, k.role
        from crop_check k join crop c on c.id = k.crop_id join accession a on a.id = k.accession_id
        order by k.id
        """;
  }
}
