package trialwood.house.web;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.transaction.annotation.Transactional;
import trialwood.house.House;
import trialwood.house.Houses;
import trialwood.people.Role;
import trialwood.testing.ApplicationTest;
import trialwood.testing.Someone;

@ApplicationTest
@Transactional
class HousePagesTest {

  @Autowired private MockMvc pages;
  @Autowired private Houses houses;

  @BeforeEach
  void a_house() {
    houses.save(new House("mist house", true, null));
  }

  private ResultActions spray(String hours, String... more) throws Exception {
    var request =
        post("/houses/mist house/spray")
            .with(Someone.as(Role.BENCH))
            .with(csrf())
            .param("formKey", UUID.randomUUID().toString())
            .param("product", "a fungicide")
            .param("area", "the whole house")
            .param("on", "yesterday")
            .param("endedAt", "9:30")
            .param("reEntryHours", hours);
    for (int i = 0; i < more.length; i += 2) {
      request.param(more[i], more[i + 1]);
    }
    return pages.perform(request);
  }

  @Test
  void a_sprayed_house_is_warned_of_on_every_page() throws Exception {
    spray("96").andExpect(redirectedUrl("/houses/mist%20house"));
    for (String page : new String[] {"/", "/bench", "/houses/mist house"}) {
      pages
          .perform(get(page).with(Someone.as(Role.BENCH)))
          .andExpect(status().isOk())
          .andExpect(content().string(containsString("Do not go into mist house before")));
    }
  }

  @Test
  void cooperators_are_not_told() throws Exception {
    spray("96");
    pages
        .perform(get("/trials").with(Someone.as(Role.COOPERATOR)))
        .andExpect(content().string(not(containsString("Do not go into"))));
  }

  @Test
  void no_waiting_time_is_asked_about_and_the_answer_kept() throws Exception {
    spray("0")
        .andExpect(status().isOk())
        .andExpect(content().string(containsString("does the label say so in as many words?")))
        .andExpect(content().string(containsString("a fungicide")));
    spray(
            "0",
            "checked",
            "label read again",
            "asked",
            "No waiting time at all: does the label say so in as many words?")
        .andExpect(redirectedUrl("/houses/mist%20house"));
    pages
        .perform(get("/houses/mist house").with(Someone.as(Role.READER)))
        .andExpect(content().string(containsString("checked: label read again")));
  }

  @Test
  void what_cannot_be_read_is_said_beside_its_box() throws Exception {
    spray("four").andExpect(content().string(containsString("is not a count")));
    spray("4", "endedAt", "25:00").andExpect(status().isOk());
  }

  @Test
  void a_house_that_is_not_there_is_not_found() throws Exception {
    pages
        .perform(get("/houses/glass palace").with(Someone.as(Role.BENCH)))
        .andExpect(status().isNotFound());
  }
}
