package trialwood.ground;

import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import trialwood.web.ForStaff;
import trialwood.web.Place;

/** The way to all ground data. */
@Controller
class GroundPage {

  private final JdbcClient jdbc;

  GroundPage(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  /** How much there is of each. */
  record Counts(
      long crops,
      long traits,
      long classes,
      long sites,
      long benches,
      long checks,
      long policies,
      long choices,
      long routes,
      long papers) {}

  @GetMapping("/ground")
  @ForStaff
  @Place(key = "ground", label = "Ground", order = 85)
  String ground(Model page) {
    page.addAttribute(
        "counts",
        jdbc.sql(
                """
                select (select count(*) from crop) as crops,
                       (select count(*) from trait) as traits,
                       (select count(*) from container_class) as classes,
                       (select count(*) from site) as sites,
                       (select count(*) from bench) as benches,
                       (select count(*) from crop_check) as checks,
                       (select count(*) from gate_policy) as policies,
                       (select count(*) from tray_likeness_choice) as choices,
                       (select count(*) from filing_route) as routes,
                       (select count(*) from label_format) as papers
                """)
            .query(Counts.class)
            .single());
    return "ground/ground";
  }
}
