package trialwood.walk;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.annotation.Import;
import org.springframework.test.annotation.DirtiesContext;
import org.springframework.test.context.ActiveProfiles;
import trialwood.office.DemoAccounts;

/**
 * From the bench to the dossier in the demo nursery: B18-05, held for years because one tray is no
 * evidence, has been stuck once more in three trays.
 */
@Served
@ActiveProfiles({"test", "demo"})
@DirtiesContext
@Import(SecondNursery.class)
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class DemoWayTest {

  @LocalServerPort private int port;

  @BeforeAll
  static void threeMoreTraysStandOnTheBench(@Autowired SecondNursery nursery) {
    nursery.take(
        "runs",
        """
        run,crop,from,to,check,bench,mist,bottom_heat_c,cutting,length_mm,wounding,hormone,form,ppm,dip_s,medium,crew,note
        R26,ALTHEA,{today-28},{today-28},CK-B,"mist house, bench 1",,23,softwood tip,90,none,K-IBA,quick dip in water,2000,3,peat:perlite 1:1,JT,
        """);
    nursery.take(
        "batches",
        """
        batch,run,source,wounding,hormone,form,ppm,note
        26-CK-B,R26,stock plant,,,,,
        26-B18-05,R26,container plant,,,,,
        """);
    nursery.take(
        "trays",
        """
        tray,batch,accession,cells,stuck_on,stuck,block,place,by
        26-CK-B-1,26-CK-B,CK-B,24,{today-28},24,1,1,JT
        26-CK-B-2,26-CK-B,CK-B,24,{today-28},24,2,1,JT
        26-B18-05-1,26-B18-05,B18-05,24,{today-28},24,1,2,JT
        26-B18-05-2,26-B18-05,B18-05,24,{today-28},24,2,2,JT
        26-B18-05-3,26-B18-05,B18-05,24,{today-28},24,3,2,JT
        """);
    nursery.take(
        "looks",
        """
        tray,on,lifted,rooted,alive,dead_removed,by,note
        26-B18-05-1,{today-10},6,1,24,0,JT,
        26-B18-05-1,{today-7},6,5,24,0,JT,
        """);
    nursery.take(
        "final-counts",
        """
        tray,on,rooted,alive_without_roots,dead,taken_out,root_score,by,note
        26-CK-B-1,{today-1},23,0,1,0,4,JT,
        26-CK-B-2,{today-1},22,1,1,0,4,JT,
        26-B18-05-1,{today-1},22,1,1,0,4,JT,
        26-B18-05-2,{today-1},23,0,1,0,4,JT,
        """);
  }

  @Test
  @Order(1)
  void two_trays_are_still_no_evidence() {
    try (Browser desk = Browser.desk(port)) {
      desk.signIn("breeder", DemoAccounts.PASSWORD);
      desk.open("/gates/propagation");
      assertThat(desk.row("B18-05")).contains("for hold", "Not settled: Rooted of those stuck");
    }
  }

  @Test
  @Order(2)
  void the_bench_counts_the_third() {
    try (Browser phone = Browser.phone(port)) {
      phone.signIn("bench", DemoAccounts.PASSWORD);
      phone.follow("Bench");
      phone.follow("Walk the round");
      phone.follow("26-B18-05-3");
      phone.type("rooted", "21");
      phone.type("aliveWithoutRoots", "2");
      phone.type("dead", "1");
      phone.type("takenOut", "0");
      phone.choose("rootScore", "4");
      phone.choose("by", "JT");
      phone.press("Save, close the tray");
      assertThat(phone.text()).contains("Stored for tray 26-B18-05-3.");
    }
  }

  @Test
  @Order(3)
  void the_count_settles_the_rooting_and_the_breeder_need_not_wait_for_the_weaning() {
    try (Browser desk = Browser.desk(port)) {
      desk.signIn("breeder", DemoAccounts.PASSWORD);
      desk.open("/gates/propagation");
      assertThat(desk.row("B18-05")).contains("66 of 72").doesNotContain("Not settled");
      desk.follow("B18-05");
      desk.choose("choice", "advance");
      desk.type("reason", "Three trays agree at last; the one of 2023 came off the mist 20 of 21.");
      desk.press("Put it on record");
      assertThat(desk.text()).contains("B18-05: the decision is on record.");
    }
  }

  @Test
  @Order(4)
  void the_dossier_tells_the_first_run_and_prints_it() throws Exception {
    try (Browser desk = Browser.desk(port)) {
      desk.signIn("dossier", DemoAccounts.PASSWORD);
      desk.open("/candidates/B18-05");
      desk.follow("Dossier");
      assertThat(desk.text()).contains("Dossier of B18-05", "run R23");
      assertThat(Paper.of(desk.fetch("PDF")).text())
          .contains("Dossier of B18-05", "Seedling of seed parent BRINE, open-pollinated.")
          .contains("Batch 23-B18-05 of run R23", "21 of 24 had rooted");
    }
  }
}
