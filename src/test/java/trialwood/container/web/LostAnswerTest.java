package trialwood.container.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import org.springframework.transaction.annotation.Transactional;
import trialwood.container.Nursery;
import trialwood.observation.Observations;
import trialwood.people.Role;
import trialwood.testing.ApplicationTest;
import trialwood.testing.Someone;

/** A measuring sheet sent from a device's outbox, whose answer is lost on the way back. */
@ApplicationTest
@Import(Nursery.class)
@Transactional
class LostAnswerTest {

  private static final String SHEET = "/containers/22-C18-03-G1/measure";

  @Autowired MockMvcTester web;
  @Autowired Nursery nursery;
  @Autowired Observations observations;

  private final String key = UUID.randomUUID().toString();
  private List<UUID> plants;

  @BeforeEach
  void two_measured_plants() {
    UUID lot = nursery.lot("22-C18-03-G1", "C18-03", 20);
    plants = nursery.numbered(lot, "22-C18-03-G1", 2);
    nursery.measured(plants, nursery.height(), LocalDate.of(2022, 9, 1), 61, 58);
  }

  @Test
  void good_lines_stand_once_and_the_bad_one_is_said_both_times() {
    for (int arrival = 1; arrival <= 2; arrival++) {
      assertThat(send("63", "23"))
          .hasStatus(422)
          .bodyText()
          .contains("cm?", "value=\"23\"")
          .doesNotContain("value=\"63\"");
      assertThat(observations.findByUnitIdOrderByOnDate(plants.get(0))).hasSize(2);
      assertThat(observations.findByUnitIdOrderByOnDate(plants.get(1))).hasSize(1);
    }
  }

  @Test
  void a_sheet_without_a_fault_is_stored_once_and_answered_twice_alike() {
    for (int arrival = 1; arrival <= 2; arrival++) {
      assertThat(send("63", "60")).hasStatus(204);
      assertThat(observations.findByUnitIdOrderByOnDate(plants.get(1))).hasSize(2);
    }
  }

  private MvcTestResult send(String first, String second) {
    return web.post()
        .uri(SHEET)
        .header("X-Outbox", "e1")
        .with(Someone.as(Role.BENCH))
        .with(csrf())
        .param("formKey", key)
        .param("on", "2022-09-20")
        .param("traits", "HEIGHT")
        .param("lines[0].plant", plants.get(0).toString())
        .param("lines[0].cells[0]", first)
        .param("lines[1].plant", plants.get(1).toString())
        .param("lines[1].cells[0]", second)
        .exchange();
  }
}
