package trialwood.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;

import java.io.UnsupportedEncodingException;
import java.math.BigDecimal;
import java.time.MonthDay;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import trialwood.crop.Better;
import trialwood.crop.ContainerClass;
import trialwood.crop.ContainerClasses;
import trialwood.crop.Crop;
import trialwood.crop.Crops;
import trialwood.crop.LookDays;
import trialwood.crop.Trait;
import trialwood.crop.TraitKind;
import trialwood.crop.TraitStep;
import trialwood.crop.TraitSteps;
import trialwood.crop.Traits;
import trialwood.crop.Window;
import trialwood.lineage.Accession;
import trialwood.lineage.AccessionKind;
import trialwood.lineage.Accessions;
import trialwood.lineage.CheckRole;
import trialwood.lineage.CropCheck;
import trialwood.lineage.CropChecks;
import trialwood.lineage.Parentage;
import trialwood.people.Role;
import trialwood.site.Site;
import trialwood.site.Sites;
import trialwood.testing.ApplicationTest;
import trialwood.testing.Someone;
import trialwood.testing.Statements;

@ApplicationTest
@Import(Statements.class)
class GroundPagesTest {

  private static final List<String> LISTS =
      List.of(
          "/ground",
          "/ground/crops",
          "/ground/traits",
          "/ground/containers",
          "/ground/sites",
          "/ground/checks",
          "/ground/gates",
          "/ground/tray-likeness",
          "/ground/routes");

  @Autowired MockMvcTester browser;
  @Autowired Statements statements;
  @Autowired Crops crops;
  @Autowired Traits traits;
  @Autowired TraitSteps steps;
  @Autowired ContainerClasses classes;
  @Autowired Sites sites;
  @Autowired Accessions accessions;
  @Autowired CropChecks checks;

  /** Codes of the records of one test; the next has others. */
  private String code;

  @BeforeEach
  void ground_of_its_own() {
    code = "G" + (crops.count() + 1);
    plant(code);
  }

  @Test
  void the_nursery_reads_the_ground_data_and_cooperators_do_not() {
    List<String> pages =
        List.of("/ground/crops/" + code, "/ground/traits/%s/FORM".formatted(code), site());
    for (Role role : Role.values()) {
      int status = role == Role.COOPERATOR ? 403 : 200;
      for (String page : LISTS) {
        assertThat(get(page, role)).as("%s as %s", page, role).hasStatus(status);
      }
      for (String page : pages) {
        assertThat(get(page, role)).as("%s as %s", page, role).hasStatus(status);
      }
    }
  }

  @Test
  void twenty_rows_cost_no_more_statements_than_one() {
    Map<String, Integer> few = new LinkedHashMap<>();
    LISTS.forEach(page -> few.put(page, statements(page)));

    IntStream.rangeClosed(1, 20).forEach(n -> plant("%s-%d".formatted(code, n)));

    LISTS.forEach(
        page -> assertThat(statements(page)).as(page).isPositive().isEqualTo(few.get(page)));
  }

  @Test
  void a_trait_shows_its_window_its_range_and_every_step_of_its_scale() {
    assertThat(get("/ground/traits/%s/FORM".formatted(code), Role.READER))
        .bodyText()
        .contains("scale house 2018", "<td>5</td><td>even from every side</td>");
    assertThat(get("/ground/traits?q=form&kind=SCORE&sort=-window&crop=" + code, Role.READER))
        .bodyText()
        .contains(">FORM<", "0–5", "1\u00a0Aug\u00a0–\u00a030\u00a0Sep")
        .doesNotContain("No trait is like that.");
    assertThat(get("/ground/traits?kind=DATE&crop=" + code, Role.READER))
        .bodyText()
        .contains("No trait is like that.");
  }

  @Test
  void only_breeder_and_administrator_change_ground_data() {
    for (Role role : Role.values()) {
      boolean keeps = role == Role.BREEDER || role == Role.ADMINISTRATOR;
      assertThat(get(site() + "/edit", role)).hasStatus(keeps ? 200 : 403);
      assertThat(body(get(site(), role)).contains("Change it")).as(role.word()).isEqualTo(keeps);
    }
  }

  @Test
  void a_change_is_stored_and_stands_in_the_history_with_old_and_new() {
    assertThat(send(site(), Map.of("version", "0", "name", "Mill Field", "hardinessZone", "7a")))
        .hasRedirectedUrl(site());

    assertThat(get(site(), Role.READER))
        .bodyText()
        .contains(
            "breeder",
            "Hardiness zone: <del>6b</del> → <ins>7a</ins>",
            "Name: <del>Home Block</del> → <ins>Mill Field</ins>",
            "written down first");
  }

  @Test
  void two_who_change_a_crop_at_once_see_both_and_lose_nothing() {
    String crop = "/ground/crops/" + code;
    assertThat(send(crop, cropSaying("0", "7 10 14"))).hasRedirectedUrl(crop);

    assertThat(send(crop, cropSaying("0", "9 12")))
        .hasStatusOk()
        .bodyText()
        .contains(
            "Somebody else changed this meanwhile",
            "<td>9 12</td><td>7 10 14</td>",
            "value=\"9 12\"",
            "name=\"version\" value=\"1\"");
    assertThat(crops.findByCode(code).orElseThrow().lookDays().days()).containsExactly(7, 10, 14);

    assertThat(send(crop, cropSaying("1", "9 12"))).hasRedirectedUrl(crop);
    assertThat(crops.findByCode(code).orElseThrow().lookDays().days()).containsExactly(9, 12);
  }

  @Test
  void two_who_change_a_trait_at_once_see_both() {
    String trait = "/ground/traits/%s/FORM".formatted(code);
    assertThat(send(trait, traitSaying("0", "5", "15 Jul"))).hasRedirectedUrl(trait);

    assertThat(send(trait, traitSaying("0", "6", "15 Jul")))
        .hasStatusOk()
        .bodyText()
        .contains("<td>6</td><td>5</td>", "name=\"version\" value=\"1\"");
  }

  @Test
  void what_cannot_be_is_refused_beside_its_field_and_what_was_typed_is_kept() {
    assertThat(send(site(), Map.of("version", "0", "name", "", "hardinessZone", "14c")))
        .hasStatusOk()
        .bodyText()
        .contains(
            "Give the site a name.",
            "href=\"#hardinessZone\"",
            "A hardiness zone runs from 1a to 13b",
            "value=\"14c\"");
    assertThat(send(site(), Map.of("version", "0", "name", "Mill", "latitude", "north")))
        .bodyText()
        .contains("“north” is not a number.", "value=\"north\"");
    assertThat(send("/ground/crops/" + code, cropSaying("0", "often")))
        .bodyText()
        .contains("Look days are whole numbers", "value=\"often\"");
    assertThat(send("/ground/crops/" + code, cropSaying("0", "7 ".repeat(200) + "9 99999999999")))
        .bodyText()
        .contains("Look days are whole numbers");
    String trait = "/ground/traits/%s/FORM".formatted(code);
    assertThat(send(trait, traitSaying("0", "-1", "15 Jul")))
        .bodyText()
        .contains("The lowest possible value is above the highest.");
    assertThat(send(trait, traitSaying("0", "5", "31 Feb")))
        .bodyText()
        .contains("Type a day of the year like 15 Apr.", "value=\"31 Feb\"");
    assertThat(send(trait, Map.of("version", "0", "takenOn", "moon")))
        .bodyText()
        .contains("Choose from the kinds of units", "Say which way it is better");
    assertThat(sites.findByCode(code).orElseThrow().version()).isZero();
  }

  @Test
  void a_code_with_a_slash_is_refused_wherever_it_would_stand_in_an_address() {
    for (Runnable slash :
        List.<Runnable>of(
            () -> new Site("H/1", "Home", null, null, null, null, null),
            () -> crop("H/1"),
            () -> trait(UUID.randomUUID(), "F/1"))) {
      assertThat(catchThrowable(slash::run))
          .hasMessageContaining("Write letters, figures, blanks and - . _ + only");
    }
  }

  private String site() {
    return "/ground/sites/" + code;
  }

  private void plant(String code) {
    sites.save(new Site(code, "Home Block", "loam", "6b", null, null, null));
    classes.save(new ContainerClass(code, new BigDecimal("2.5"), new BigDecimal("4.1"), null));
    UUID crop = crops.save(crop(code)).id();
    UUID trait = traits.save(trait(crop, "FORM")).id();
    steps.save(new TraitStep(trait, 5, "even from every side", "house 2018"));
    Accession check =
        accessions.save(
            new Accession(
                crop, "CK-" + code, AccessionKind.CULTIVAR, Parentage.unknown(), "bought"));
    checks.save(new CropCheck(crop, check.id(), CheckRole.MARKET));
  }

  private static Crop crop(String code) {
    return new Crop(code, "Weigela florida", "Weigela", true, 10, 28, LookDays.of("7 14"), 80, "");
  }

  private static Trait trait(UUID crop, String code) {
    return new Trait(
        crop,
        code,
        "Form",
        TraitKind.SCORE,
        null,
        BigDecimal.ZERO,
        new BigDecimal("5"),
        0,
        Better.HIGHER,
        new Window(MonthDay.of(8, 1), MonthDay.of(9, 30)),
        "2",
        Set.of("plant"),
        "whole plant",
        false);
  }

  private static Map<String, String> cropSaying(String version, String lookDays) {
    return Map.of(
        "version", version,
        "botanicalName", "Weigela florida",
        "commonName", "Weigela",
        "woody", "true",
        "rootingFromDays", "10",
        "rootingToDays", "28",
        "lookDays", lookDays,
        "checkFloorPercent", "80");
  }

  private static Map<String, String> traitSaying(String version, String highest, String from) {
    return Map.of(
        "version", version,
        "name", "Form",
        "lowest", "0",
        "highest", highest,
        "decimals", "0",
        "better", "HIGHER",
        "windowFrom", from,
        "windowUntil", "30 Sep",
        "takenOn", "plant");
  }

  private int statements(String page) {
    return statements.of(() -> assertThat(get(page, Role.BREEDER)).as(page).hasStatusOk());
  }

  private MvcTestResult get(String page, Role role) {
    return browser.get().uri(page).with(Someone.as(role)).exchange();
  }

  private static String body(MvcTestResult answer) {
    try {
      return answer.getResponse().getContentAsString();
    } catch (UnsupportedEncodingException impossible) {
      throw new AssertionError(impossible);
    }
  }

  private MvcTestResult send(String page, Map<String, String> typed) {
    var form = browser.post().uri(page + "/edit").param("formKey", UUID.randomUUID().toString());
    typed.forEach(form::param);
    return form.with(Someone.as(Role.BREEDER)).with(csrf()).exchange();
  }
}
