package trialwood.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import trialwood.people.Role;
import trialwood.testing.ApplicationTest;

@ApplicationTest
class DoorsTest {

  @Autowired Doors doors;

  @Test
  void a_form_of_the_bench_opens_to_those_who_write_there_and_its_tray_to_all_of_the_staff() {
    assertThat(doors.opens(Role.BENCH, "/bench/trays/22-A-1/look")).isTrue();
    assertThat(doors.opens(Role.READER, "/bench/trays/22-A-1/look")).isFalse();
    assertThat(doors.opens(Role.READER, "/bench/trays/22-A-1")).isTrue();
    assertThat(doors.opens(Role.COOPERATOR, "/bench/trays/22-A-1")).isFalse();
  }

  @Test
  void the_nearer_of_two_pages_decides() {
    assertThat(doors.opens(Role.READER, "/bench/runs/R22")).isTrue();
    assertThat(doors.opens(Role.READER, "/bench/runs/new")).isFalse();
  }

  @Test
  void what_stands_behind_the_path_does_not_matter() {
    assertThat(doors.opens(Role.READER, "/?place=Bench+2#due")).isTrue();
    assertThat(doors.opens(Role.READER, "/no/such/page")).isFalse();
  }
}
