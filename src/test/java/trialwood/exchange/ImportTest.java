package trialwood.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import trialwood.crop.Crops;
import trialwood.field.FieldTags;
import trialwood.lineage.Accessions;
import trialwood.site.Sites;
import trialwood.trial.Plots;

@ExchangeTest
class ImportTest {

  private static final String CROPS =
      "crop,botanical_name,common_name,woody,rooting_from_days,rooting_to_days,look_days,"
          + "check_floor_percent,denomination_class\n";
  private static final String SITES =
      "site,name,place,hardiness_zone,latitude,longitude,cooperator\n";
  private static final String TAGS =
      "accession,population,row,position,on,by,seen,talk_name,seed_parent,description,outstanding\n";

  @Autowired private Flyway flyway;
  @Autowired private Sheets sheets;
  @Autowired private Import imports;
  @Autowired private ImportRecords records;
  @Autowired private Crops crops;
  @Autowired private Sites sites;
  @Autowired private Accessions accessions;
  @Autowired private FieldTags tags;
  @Autowired private Plots plots;

  @BeforeEach
  void an_empty_record() {
    flyway.clean();
    flyway.migrate();
  }

  @Test
  void every_problem_is_reported_at_once_and_nothing_is_stored() {
    ImportResult result =
        take(
            "crops",
            CROPS
                + "GOOD,Genus good,Good,yes,14,42,7 10 14,85,\n"
                + "BAD1,Genus bad,Bad,maybe,circa 14,42,7 10 14,85,\n"
                + "BAD2,Genus bad,Bad,yes,42,14,7 ten,85,\n"
                + ",Genus bad,Bad,yes,14,42,7 10 14,850,\n");

    assertThat(places(result))
        .containsExactly(
            "3 woody maybe", "3 rooting_from_days circa 14", "4 look_days 7 ten", "5 crop ");
    assertThat(result.kept()).isFalse();
    assertThat(crops.count()).isZero();
    assertThat(records.count()).isZero();
  }

  @Test
  void what_a_rule_refuses_is_found_in_its_column() {
    ImportResult result = take("crops", CROPS + "BAD,Genus bad,Bad,yes,42,14,7 10,850,\n");

    assertThat(places(result)).containsExactly("2 rooting_to_days 14", "2 check_floor_percent 850");
  }

  @Test
  void a_row_said_twice_is_refused_naming_both() {
    ImportResult result = take("sites", SITES + "HB,Home Block,,,,,\nhb,Home again,,,,,\n");

    assertThat(result.problems())
        .singleElement()
        .isEqualTo(
            new ImportProblem(3, "site", "hb", "Row 2 says this already. Keep one of the two."));
    assertThat(sites.count()).isZero();
  }

  @Test
  void a_row_that_is_on_record_is_refused() {
    take("sites", SITES + "HB,Home Block,,,,,\n");
    ImportResult result = take("sites", SITES + "CH,Corrow Hill,,,,,\nHB,Home Block,,,,,\n");

    assertThat(places(result)).containsExactly("3 site HB");
    assertThat(sites.count()).isEqualTo(1);
  }

  @Test
  void unknown_missing_and_double_columns_are_refused_before_any_row_is_read() {
    ImportResult result = take("people", "initials,nmae,initials\nRA,Runa Aldery,oops\n");

    assertThat(places(result)).containsExactly("1 initials ", "1 name ", "1 duty ", "1 nmae nmae");
  }

  @Test
  void a_check_says_what_taking_it_in_would_say_and_keeps_nothing() {
    String file = SITES + "HB,Home Block,,,,,\n";
    ImportResult check = imports.check(sheet("sites"), "sites.csv", bytes(file));

    assertThat(check.isSound()).isTrue();
    assertThat(check.kept()).isFalse();
    assertThat(sites.count()).isZero();
    assertThat(take("sites", file).kept()).isTrue();
    assertThat(sites.count()).isEqualTo(1);
  }

  @Test
  void a_file_that_was_taken_in_is_kept_in_the_list() {
    take("sites", SITES + "HB,Home Block,,,,,\n");

    ImportRecord record = records.findTop50ByOrderByRecordedAtDesc().get(0);
    assertThat(record.sheet()).isEqualTo("sites");
    assertThat(record.rowCount()).isEqualTo(1);
  }

  @Test
  void a_spreadsheets_semicolons_byte_order_mark_and_padding_are_read() {
    String file =
        "\ufeffsite;name;place;hardiness_zone;latitude;longitude;cooperator;;\r\n"
                .replace(";;\r", "\r")
            + "HB;\"Home; Block\";;6b;;;;;\r\n;;;;;;\r\n";
    assertThat(take("sites", file).problems()).isEmpty();
    assertThat(sites.findByCode("HB"))
        .hasValueSatisfying(site -> assertThat(site.name()).isEqualTo("Home; Block"));
  }

  @Test
  void a_file_that_is_no_table_is_refused_with_a_sentence() {
    assertThat(take("sites", "").problems()).hasSize(1);
    assertThat(take("sites", SITES + "HB,\"Home").problems()).hasSize(1);
    byte[] latin = "site,name\nHB,M\u00fchle\n".getBytes(StandardCharsets.ISO_8859_1);
    assertThat(imports.take(sheet("sites"), "latin.csv", latin).problems())
        .singleElement()
        .satisfies(problem -> assertThat(problem.sentence()).contains("UTF-8"));
  }

  @Test
  void tags_obey_the_rules_of_the_field() {
    ground();
    ImportResult result =
        take(
            "field-tags",
            TAGS
                + "C18-03,P18,17,88,2020-08-27,RA,plain white,,CINDER,,no\n"
                + "c18 - 3,P18,17,89,2020-08-27,RA,the same code,,,,no\n"
                + "C18-04,P18,17,88,2020-08-27,RA,the same place,,,,no\n"
                + "C18-05,P18,37,181,2020-08-27,RA,no such place,,,,no\n"
                + "C18-06,P18,1,1,2018-05-01,RA,before planting,,,,no\n"
                + "C18-07,P19,1,1,03/04/2020,ZZ,nobody knows,,,,no\n");

    assertThat(places(result))
        .containsExactly(
            "3 accession c18 - 3",
            "4 position 88",
            "5 row 37",
            "5 position 181",
            "6 on 2018-05-01",
            "7 on 03/04/2020");
    assertThat(tags.count()).isZero();
    assertThat(accessions.named("C18-03")).isEmpty();
  }

  @Test
  void a_trial_that_lacks_one_of_its_plots_or_says_one_twice_is_not_planted_at_all() {
    ground();
    load("field-tags", "trials", "trial-entries", "trial-sites");
    String all =
        DemoFiles.text(sheet("plots"))
            .lines()
            .filter(line -> line.matches("(plot|T1-).*"))
            .collect(Collectors.joining("\n"));
    assertThat(all.lines()).as("with the header").hasSize(97);

    ImportResult lacking = take("plots", all.substring(0, all.lastIndexOf('\n')));
    assertThat(lacking.problems())
        .singleElement()
        .satisfies(
            problem -> {
              assertThat(problem.column()).isEqualTo("plot");
              assertThat(problem.sentence()).startsWith("Trial T1 lacks a plot: ");
            });

    ImportResult twice = take("plots", all + all.substring(all.lastIndexOf('\n')));
    assertThat(twice.problems())
        .singleElement()
        .satisfies(
            problem -> {
              assertThat(problem.row()).isEqualTo(98);
              assertThat(problem.column()).isEqualTo("plot");
              assertThat(problem.sentence()).startsWith("Row 97 says this already.");
            });
    assertThat(plots.count()).isZero();
    assertThat(take("plots", all).kept()).isTrue();
  }

  private void ground() {
    load("crops", "sites", "people", "accessions", "populations");
  }

  private void load(String... names) {
    for (String name : names) {
      Sheet sheet = sheet(name);
      assertThat(imports.take(sheet, name, DemoFiles.of(sheet)).problems()).isEmpty();
    }
  }

  private ImportResult take(String sheet, String file) {
    return imports.take(sheet(sheet), sheet + ".csv", bytes(file));
  }

  private Sheet sheet(String name) {
    return sheets.named(name).orElseThrow();
  }

  private static byte[] bytes(String file) {
    return file.getBytes(StandardCharsets.UTF_8);
  }

  private static List<String> places(ImportResult result) {
    return result.problems().stream()
        .map(problem -> problem.row() + " " + problem.column() + " " + problem.found())
        .toList();
  }
}
