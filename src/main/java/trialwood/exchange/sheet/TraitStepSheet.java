package trialwood.exchange.sheet;

import org.springframework.stereotype.Component;
import trialwood.crop.TraitStep;
import trialwood.crop.TraitSteps;
import trialwood.crop.Traits;
import trialwood.exchange.Column;
import trialwood.exchange.Known;
import trialwood.exchange.Rows;
import trialwood.exchange.Sheet;

/** The steps of scored traits, in words. */
@Component
class TraitStepSheet extends Sheet {

  private static final Column<String> CROP = Column.code("crop", Known.CROP, "its crop").key();
  private static final Column<String> TRAIT = Column.text("trait", 20, "the scored trait").key();
  private static final Column<Integer> STEP = Column.count("step", "the step's number").key();
  private static final Column<String> MEANING =
      Column.text("meaning", 200, "what a plant on this step looks like").required();
  private static final Column<String> SCALE =
      Column.text("scale", 40, "version of the scale, such as house 2018").key();

  private final TraitSteps steps;
  private final Traits traits;

  TraitStepSheet(TraitSteps steps, Traits traits) {
    super(6, "trait-steps", CROP, TRAIT, STEP, MEANING, SCALE);
    this.steps = steps;
    this.traits = traits;
  }

  @Override
  protected void apply(Rows rows) {
    CropTraits known = new CropTraits(traits.findAll());
    rows.each(
        row ->
            steps.save(
                new TraitStep(
                    known.id(row.id(CROP), row, TRAIT),
                    row.the(STEP),
                    row.the(MEANING),
                    row.the(SCALE))));
  }

  @Override
  protected String query() {
    return """
        select c.code, t.code, s.step, s.meaning, s.scale
        from trait_step s join trait t on t.id = s.trait_id join crop c on c.id = t.crop_id
        order by s.id
        """;
  }
}
