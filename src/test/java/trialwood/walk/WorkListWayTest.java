package trialwood.walk;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.annotation.Import;
import org.springframework.test.annotation.DirtiesContext;
import org.springframework.test.context.ActiveProfiles;
import trialwood.office.DemoAccounts;

/** From the list of the day to the form, with a thumb. */
@Served
@ActiveProfiles({"test", "demo"})
@Import(SecondNursery.class)
@DirtiesContext
class WorkListWayTest {

  @LocalServerPort private int port;

  @BeforeAll
  static void fourTraysAreDueForALook(@Autowired SecondNursery nursery) {
    nursery.take(
        "runs",
        """
        run,crop,from,to,check,bench,mist,bottom_heat_c,cutting,length_mm,wounding,hormone,form,ppm,dip_s,medium,crew,note
        R26W,ALTHEA,{today-7},{today-7},CK-B,"mist house, bench 9",,23,softwood tip,90,none,K-IBA,quick dip in water,2000,3,peat:perlite 1:1,JT,
        """);
    nursery.take(
        "batches",
        """
        batch,run,source,wounding,hormone,form,ppm,note
        26W-CK-B,R26W,stock plant,,,,,
        """);
    nursery.take(
        "trays",
        """
        tray,batch,accession,cells,stuck_on,stuck,block,place,by
        26W-CK-B-1,26W-CK-B,CK-B,24,{today-7},24,1,1,JT
        26W-CK-B-2,26W-CK-B,CK-B,24,{today-7},24,2,1,JT
        26W-CK-B-3,26W-CK-B,CK-B,24,{today-7},24,3,1,JT
        26W-CK-B-4,26W-CK-B,CK-B,24,{today-7},24,4,1,JT
        """);
  }

  @Test
  void a_tap_on_the_list_and_one_on_the_tray_open_its_form() {
    try (Browser phone = Browser.phone(port)) {
      phone.signIn("bench", DemoAccounts.PASSWORD);
      phone.open("/?place=MIST+HOUSE%2C+BENCH+9");
      assertThat(phone.text()).containsPattern("4\\s+due").contains("Looks at trays · 4");
      phone.unfold("Looks at trays");
      phone.follow("Look at tray 26W-CK-B-2");
      assertThat(phone.path()).startsWith("/bench/trays/26W-CK-B-2/look");
      assertThat(phone.text()).contains("26W-CK-B-2");
    }
  }

  @Test
  void who_only_reads_is_led_to_the_tray_and_not_to_a_form_that_is_closed_to_them() {
    try (Browser phone = Browser.phone(port)) {
      phone.signIn("reader", DemoAccounts.PASSWORD);
      phone.open("/?kind=looks&place=MIST+HOUSE%2C+BENCH+9");
      phone.unfold("Looks at trays");
      phone.follow("Look at tray 26W-CK-B-2");
      assertThat(phone.path()).isEqualTo("/bench/trays/26W-CK-B-2");
    }
  }

  @Test
  void a_stock_is_thinned_without_leaving_the_bench() {
    try (Browser phone = Browser.phone(port)) {
      phone.signIn("bench", DemoAccounts.PASSWORD);
      phone.open("/arithmetic");
      phone.follow("Thin a hormone stock");
      phone.type("stock", "1");
      phone.choose("stockUnit", "%");
      phone.type("wanted", "3000");
      phone.press("Work it out");
      assertThat(phone.text()).contains("300.0 mL", "700.0 mL");
      assertThat(phone.fits()).isTrue();
    }
  }
}
