package trialwood.web;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.context.annotation.Bean;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.config.annotation.EnableWebMvc;
import org.thymeleaf.spring6.SpringTemplateEngine;
import org.thymeleaf.spring6.view.ThymeleafViewResolver;
import org.thymeleaf.templateresolver.ClassLoaderTemplateResolver;
import trialwood.web.IntervalPicture.Scale;
import trialwood.web.LifeLine.Known;

/** Pages that show every fragment with invented data, served without the application. */
@TestConfiguration
@EnableWebMvc
class Gallery {

  private static final Map<String, Map<String, String>> REFUSED =
      Map.of(
          "count",
              Map.of(
                  "rooted", "25 recorded, 24 stuck: count this tray again",
                  "on", "“5/6/2026” may be May or June: write 5 Jun 2026",
                  "score", "Say how the roots of most cuttings look",
                  "by", "Say who counted"),
          "form",
              Map.of(
                  "label", "No tray carries this label",
                  "on", "“5/6/2026” may be May or June: write 5 Jun 2026",
                  "score", "Choose a medium",
                  "medium", "Choose a hormone, or none",
                  "wounded", "Wounded cuttings need a length",
                  "note", "Say why the count differs",
                  "checked", "If it is right all the same, say here what you found."),
          "gate", Map.of("rows[1].decision", "Say why A18-04 goes against the records"),
          "list", Map.of("rows[1].decision", "1250 cm is taller than this crop grows"));

  record Viewer(String nursery, String account, String role, String initials, List<Place> places) {}

  record Place(String key, String label, String href) {}

  record Person(long id, String initials, String name) {}

  record Row(@Nullable String decision) {}

  record Form(
      @Nullable String formKey,
      @Nullable String label,
      @Nullable String rooted,
      @Nullable String alive,
      @Nullable String dead,
      @Nullable String takenOut,
      @Nullable String length,
      @Nullable String score,
      @Nullable String by,
      @Nullable String on,
      @Nullable String medium,
      boolean wounded,
      @Nullable String note,
      @Nullable String asked,
      @Nullable String checked,
      @Nullable List<Row> rows) {}

  record Line(
      String code,
      String name,
      String asked,
      String under,
      String said,
      @Nullable IntervalPicture picture,
      String verdict,
      String line) {}

  @Bean
  Measures measures() {
    return new Measures(ZoneOffset.UTC);
  }

  @Bean
  ThymeleafViewResolver pages() {
    ClassLoaderTemplateResolver files = new ClassLoaderTemplateResolver();
    files.setPrefix("templates/");
    files.setSuffix(".html");
    files.setCharacterEncoding("UTF-8");
    SpringTemplateEngine engine = new SpringTemplateEngine();
    engine.setTemplateResolver(files);
    ThymeleafViewResolver resolver = new ThymeleafViewResolver();
    resolver.setTemplateEngine(engine);
    resolver.setCharacterEncoding("UTF-8");
    return resolver;
  }

  @Controller
  static class Pages {

    @GetMapping("/gallery/{page}")
    String show(@PathVariable String page, @RequestParam Map<String, String> query, Model model) {
      fill(model, query);
      model.addAttribute("form", filled());
      return "gallery/" + page;
    }

    @PostMapping("/gallery/{page}")
    String refuse(
        @PathVariable String page,
        @RequestParam Map<String, String> query,
        @ModelAttribute("form") Form form,
        BindingResult problems,
        Model model) {
      fill(model, query);
      REFUSED.get(page).forEach((field, words) -> problems.rejectValue(field, "wrong", words));
      problems.reject("run", "The run was closed on 20 Jul 2022");
      return "gallery/" + page;
    }

    @GetMapping("/errors/{status}")
    String error(@PathVariable int status, Model model) {
      model.addAttribute("status", status);
      model.addAttribute("timestamp", Instant.EPOCH);
      return status < 500 ? "error/4xx" : "error/5xx";
    }

    private void fill(Model model, Map<String, String> query) {
      model.addAttribute("query", ListQuery.of(query, "stage"));
      model.addAttribute("viewer", viewer());
      model.addAttribute(
          "scores", List.of(Map.entry("3", "3"), Map.entry("4", "4"), Map.entry("5", "5")));
      model.addAttribute(
          "people", List.of(new Person(1, "JT", "Jo Tarn"), new Person(2, "MK", "Mi Kell")));
      model.addAttribute("records", Map.of("/bench/trays/2", "Tray 2", "/bench/trays/3", "Tray 3"));
      model.addAttribute("lifeLine", lifeLine());
      Difference renamed = new Difference("Talk name", "–", "Kettle");
      model.addAttribute("differences", List.of(renamed));
      model.addAttribute("seenVersion", 1);
      model.addAttribute(
          "changes",
          List.of(
              new Change(Instant.EPOCH, "breeder", false, List.of(renamed)),
              new Change(Instant.EPOCH, "trialwood", true, List.of())));
      model.addAttribute("criteria", criteria());
      model.addAttribute("gate", gate());
    }

    private Viewer viewer() {
      return new Viewer(
          "Pellamore Ridge",
          "runa",
          "breeder",
          "RA",
          List.of(
              new Place("today", "Today", "/"),
              new Place("field", "Field", "/field"),
              new Place("bench", "Bench", "/bench"),
              new Place("containers", "Containers", "/containers"),
              new Place("trials", "Trials", "/trials"),
              new Place("candidates", "Candidates", "/candidates"),
              new Place("gates", "Gates", "/gates"),
              new Place("dossiers", "Dossiers", "/dossiers"),
              new Place("ground", "Ground", "/ground"),
              new Place("import", "Import", "/import")));
    }

    private Form filled() {
      List<Row> rows = List.of(new Row("ADVANCE"), new Row(null), new Row(null), new Row(null));
      return new Form(
          "k1",
          "",
          "21",
          "1",
          "1",
          "1",
          "",
          "4",
          "1",
          "14 May 2026",
          "",
          true,
          "",
          null,
          null,
          rows);
    }

    private LifeLine lifeLine() {
      return LifeLine.growing(
          "Trial",
          List.of(
              new Known("Field", "tagged 19 Aug 2021"),
              new Known("Propagation", "66 of 72 rooted, 2022"),
              new Known("Container #1", "20 potted Jul 2022"),
              new Known("Container #3", "12 shifted Mar 2023"),
              new Known("Trial", "third season"),
              new Known("Dossier", "draft begun"),
              new Known("Released", "")));
    }

    private List<Line> criteria() {
      IntervalPicture share = IntervalPicture.on(Scale.percent());
      IntervalPicture weeks = IntervalPicture.on(new Scale(-1, 5, 1, "weeks"));
      IntervalPicture ratio = IntervalPicture.on(new Scale(0, 1.5, 2, ""));
      return List.of(
          criterion(
              "Rooted of stuck, 2022",
              "66 of 72, 3 trays",
              "91.7 %",
              "MEETS",
              share.reaching(80).between(83, 96.1).showing(91.7)),
          criterion(
              "Survival off the mist",
              "65 of 66",
              "98.5 %",
              "MEETS",
              share.reaching(92).between(93, 99.6).showing(98.5)),
          criterion(
              "Bloom against CK-1",
              "8 of 8 site-seasons ahead",
              "+2.1 weeks",
              "MEETS",
              weeks.reaching(1).between(1.3, 3).showing(2.1)),
          criterion(
              "Leaf spot against CK-1",
              "no credit from Corrow Hill: no pressure",
              "0.66",
              "NOT_SETTLED",
              ratio.stayingUnder(0.8).between(0.48, 0.88).showing(0.66)),
          criterion(
              "Growth",
              "beyond the scale",
              "+7 weeks",
              "FALLS_SHORT",
              weeks.stayingUnder(1).between(1.3, 7).showing(7)),
          criterion("Off-types", "5 allowed at 1 %", "–", "NO_RECORD", null));
    }

    private Line criterion(
        String asked,
        String under,
        String said,
        String verdict,
        @Nullable IntervalPicture picture) {
      return new Line("", "", asked, under, said, picture, verdict, "");
    }

    private List<Line> gate() {
      IntervalPicture share = IntervalPicture.on(Scale.percent()).reaching(80).hopeEndingAt(65);
      return List.of(
          new Line(
              "C18-03",
              "Ferry",
              "",
              "",
              "66 of 72",
              share.between(83, 96.1).showing(91.7),
              "MEETS",
              "ADVANCE"),
          new Line(
              "A18-04",
              "Pewter",
              "",
              "Trays disagree (χ² 27.1, 2 df). Two more trays settle it " + "with chance 0.84.",
              "23, 22, 9",
              share.between(47, 94).showing(75),
              "NOT_SETTLED",
              "HOLD"),
          new Line(
              "D18-01",
              "",
              "",
              "One more tray settles it with chance 0.81.",
              "57 of 72",
              share.between(68, 87).showing(79.2),
              "NOT_SETTLED",
              "HOLD"),
          new Line(
              "B18-03",
              "Opal",
              "",
              "Outstanding flower: a discard needs two valid runs, this is " + "one.",
              "14 of 72",
              share.between(11.7, 30).showing(19.4),
              "FALLS_SHORT",
              "DISCARD"));
    }
  }
}
