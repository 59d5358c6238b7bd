package trialwood.analysis.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import trialwood.analysis.TwoWayTable;
import trialwood.analysis.distinct.AdjustedSpread;
import trialwood.analysis.distinct.ColourDifference;
import trialwood.analysis.distinct.Lab;
import trialwood.analysis.distinct.OverYears;
import trialwood.analysis.distinct.Uniformity;
import trialwood.analysis.distinct.VarietyYear;
import trialwood.analysis.growth.DiseaseProgress;
import trialwood.analysis.growth.HorsfallBarratt;
import trialwood.analysis.growth.Reading;
import trialwood.analysis.rate.Allowance;

/**
 * The tables of the standards that hold numbers, computed again. Every file names its source in its
 * first lines. Percentages there are rounded, so they are met to half of their last digit.
 */
class StandardsTest {

  private final ReferenceFolder folder = ReferenceFolder.given();

  /** UPOV TGP/8 Part II and TGP/10, the exact binomial rule. */
  @TestFactory
  List<DynamicTest> off_types_allowed() {
    return each(
        "offtypes.csv",
        line -> {
          for (int n = whole(line, "n_from"); n <= whole(line, "n_to"); n++) {
            assertThat(allowance(line, n).allowed()).isEqualTo(whole(line, "max_off_types"));
          }
          for (String end : List.of("n_from", "n_to")) {
            assertThat(100 * allowance(line, whole(line, end)).riskOfRefusing())
                .isCloseTo(number(line, "reject_prob_pct_at_" + end), within(0.5e-4 + 1e-9));
          }
        });
  }

  /** UPOV TGP/8 Part II, both error risks. */
  @TestFactory
  List<DynamicTest> off_type_risks() {
    return each(
        "offtypes_errors.csv",
        line -> {
          Allowance allowance = allowance(line, whole(line, "n"));
          assertThat(allowance.allowed()).isEqualTo(whole(line, "max_off_types"));
          assertThat(100 * allowance.riskOfRefusing())
              .isCloseTo(number(line, "type1_pct"), within(0.005 + 1e-9));
          for (String column : line.toMap().keySet()) {
            if (column.startsWith("type2_pct_at_")) {
              int times = Integer.parseInt(column.replaceAll("type2_pct_at_|x", ""));
              assertThat(100 * allowance.riskOfPassing(times * allowance.rate()))
                  .isCloseTo(number(line, column), within(0.005 + 1e-9));
            }
          }
        });
  }

  /** Sharma, Wu and Dalal (2005), table 1: four decimals. */
  @TestFactory
  List<DynamicTest> colour_differences() {
    return each(
        "ciede2000_pairs.csv",
        line -> {
          Lab one = lab(line, "1");
          Lab other = lab(line, "2");
          double wanted = number(line, "dE00");
          assertThat(ColourDifference.e2000(one, other)).isCloseTo(wanted, within(0.5e-4 + 1e-9));
          assertThat(ColourDifference.e2000(other, one)).isCloseTo(wanted, within(0.5e-4 + 1e-9));
        });
  }

  /** UPOV TGP/8 Part II, the worked example: means over the years and the decisions at 1 %. */
  @TestFactory
  List<DynamicTest> distinctness_over_years() {
    String file = "coyd_example.csv";
    var cells = new ArrayList<TwoWayTable.Cell>();
    for (CSVRecord line : folder.standard(file)) {
      for (String column : line.toMap().keySet()) {
        if (column.matches("year\\d+_mean")) {
          cells.add(new TwoWayTable.Cell(line.get("variety"), column, number(line, column)));
        }
      }
    }
    return each(
        file,
        line -> {
          OverYears years =
              TwoWayTable.of(cells).value().map(OverYears::of).orElseThrow().value().orElseThrow();
          String variety = line.get("variety");
          int row = years.table().rowOf(variety);
          assertThat(years.table().rowMean(row))
              .isCloseTo(number(line, "over_years_mean"), within(1e-9));
          for (String column : line.toMap().keySet()) {
            if (column.startsWith("decision_vs_") && !line.get(column).isEmpty()) {
              String[] words = column.split("_");
              double level = Double.parseDouble(words[4].replace("pct", "")) / 100;
              assertThat(years.distinct(words[2], variety, level))
                  .isEqualTo(line.get(column).equals("D"));
              assertThat(years.difference(words[2], variety))
                  .isCloseTo(number(line, "diff_" + words[2] + "_mean"), within(1e-9));
            }
          }
        });
  }

  /** UPOV TGP/8 Part II, moving-average form: the adjusted value of every line that has one. */
  @TestFactory
  List<DynamicTest> uniformity_over_years() {
    String file = "coyu_example.csv";
    var references = new ArrayList<VarietyYear>();
    for (CSVRecord line : folder.standard(file)) {
      if (line.get("variety").startsWith("R")) {
        references.add(varietyYear(line));
      }
    }
    return each(
        file,
        line -> {
          VarietyYear own = varietyYear(line);
          List<VarietyYear> year =
              references.stream().filter(other -> other.year() == own.year()).toList();
          Uniformity one = Uniformity.of(List.of(own), year).value().orElseThrow();
          List<AdjustedSpread> among =
              line.get("variety").startsWith("R") ? one.references() : one.candidate();
          assertThat(among)
              .filteredOn(spread -> spread.variety().equals(own.variety()))
              .singleElement()
              .satisfies(
                  spread ->
                      assertThat(spread.value())
                          .isCloseTo(number(line, "adjusted_ln_sd_plus_1"), within(0.5e-4 + 1e-9)));
        });
  }

  /** Shaner and Finney (1977) by trapezoids, Simko and Piepho (2012) by stairs. */
  @TestFactory
  List<DynamicTest> areas_under_disease_progress() {
    Map<String, List<CSVRecord>> examples = new LinkedHashMap<>();
    for (CSVRecord line : folder.standard("audpc_example.csv")) {
      examples.computeIfAbsent(line.get("example"), name -> new ArrayList<>()).add(line);
    }
    return examples.entrySet().stream()
        .map(example -> DynamicTest.dynamicTest(example.getKey(), () -> areas(example.getValue())))
        .toList();
  }

  private static void areas(List<CSVRecord> lines) {
    List<Reading> readings =
        lines.stream()
            .map(line -> new Reading(number(line, "day"), number(line, "severity_pct")))
            .toList();
    DiseaseProgress progress = DiseaseProgress.of(readings).value().orElseThrow();
    CSVRecord total = lines.get(lines.size() - 1);
    assertThat(progress.area()).isCloseTo(number(total, "audpc"), within(1e-9));
    assertThat(progress.relativeArea())
        .isCloseTo(number(total, "relative_audpc"), within(0.5e-6 + 1e-9));
    assertThat(progress.stairs()).isCloseTo(number(total, "audps"), within(1e-9));
    assertThat(progress.meanSeverity())
        .isCloseTo(number(total, "mean_severity_standardised"), within(0.5e-6 + 1e-9));
  }

  /** Horsfall and Barratt (1945): class ends and midpoints. */
  @TestFactory
  List<DynamicTest> disease_grades() {
    return each(
        "horsfall_barratt.csv",
        line -> {
          HorsfallBarratt grade = new HorsfallBarratt(whole(line, "grade_0_11"));
          assertThat(grade.low()).isEqualTo(whole(line, "low_pct"));
          assertThat(grade.high()).isEqualTo(whole(line, "high_pct"));
          assertThat(grade.midpoint()).isEqualTo(number(line, "midpoint_pct"));
          assertThat(HorsfallBarratt.of(grade.midpoint())).isEqualTo(grade);
        });
  }

  private interface Check {
    void on(CSVRecord line);
  }

  /** One test a line; a folder without the file has none. */
  private List<DynamicTest> each(String file, Check check) {
    return folder.standard(file).stream()
        .map(
            line ->
                DynamicTest.dynamicTest(
                    file + " " + String.join(" ", line.toList()), () -> check.on(line)))
        .toList();
  }

  private static Allowance allowance(CSVRecord line, int n) {
    return Allowance.of(
        n,
        number(line, "population_standard_pct") / 100,
        number(line, "acceptance_probability_pct") / 100);
  }

  private static VarietyYear varietyYear(CSVRecord line) {
    return new VarietyYear(
        line.get("variety"),
        whole(line, "year"),
        number(line, "mean"),
        number(line, "within_variety_sd"));
  }

  private static Lab lab(CSVRecord line, String which) {
    return new Lab(number(line, "L" + which), number(line, "a" + which), number(line, "b" + which));
  }

  private static int whole(CSVRecord line, String column) {
    return Integer.parseInt(line.get(column));
  }

  private static double number(CSVRecord line, String column) {
    return Double.parseDouble(line.get(column));
  }
}
