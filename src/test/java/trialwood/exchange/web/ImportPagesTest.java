package trialwood.exchange.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.user;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.nio.charset.StandardCharsets;
import java.util.Set;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.RequestPostProcessor;
import trialwood.people.Role;
import trialwood.people.SignedIn;
import trialwood.site.Sites;
import trialwood.testing.ApplicationTest;
import trialwood.testing.Someone;

@ApplicationTest
class ImportPagesTest {

  private static final String HEAD =
      "site,name,place,hardiness_zone,latitude,longitude,cooperator\n";
  private static final Pattern TICKET =
      Pattern.compile("(?:name=\"checked\" value=\"|/import/)([0-9a-f-]{36})");

  @Autowired private MockMvc web;
  @Autowired private Sites sites;

  /** A check takes itself back, so no transaction of the test may lie around it. */
  @AfterEach
  void take_the_site_away() {
    sites.findByCode("IMP-1").ifPresent(sites::delete);
  }

  @Test
  void what_was_checked_is_taken_in_with_one_press_and_only_once() throws Exception {
    String ticket = ticket(check(HEAD + "IMP-1,North Terrace,,,,,\n"));
    assertThat(sites.findByCode("IMP-1")).isEmpty();

    take(ticket, "sites", Someone.as(Role.BREEDER)).andExpect(redirectedUrl("/import"));
    assertThat(sites.findByCode("IMP-1")).isPresent();

    take(ticket, "sites", Someone.as(Role.BREEDER))
        .andExpect(status().isOk())
        .andExpect(content().string(containsString("Choose it again.")));
  }

  @Test
  void nobody_takes_in_what_another_had_checked() throws Exception {
    String ticket = ticket(check(HEAD + "IMP-2,North Terrace,,,,,\n"));
    RequestPostProcessor other = user(SignedIn.as("another", Role.BREEDER, Set.of()));

    take(ticket, "sites", other).andExpect(content().string(containsString("Choose it again.")));
    web.perform(get("/import/" + ticket + "/problems").with(other))
        .andExpect(status().isNotFound());
    assertThat(sites.findByCode("IMP-2")).isEmpty();
  }

  @Test
  void a_file_is_not_taken_in_as_another_sheet_or_by_a_made_up_ticket() throws Exception {
    String ticket = ticket(check(HEAD + "IMP-3,North Terrace,,,,,\n"));

    take(ticket, "people", Someone.as(Role.BREEDER))
        .andExpect(content().string(containsString("Choose it again.")));
    take(UUID.randomUUID().toString(), "sites", Someone.as(Role.BREEDER))
        .andExpect(content().string(containsString("Choose it again.")));
    assertThat(sites.findByCode("IMP-3")).isEmpty();
  }

  @Test
  void the_bad_rows_come_back_with_what_is_wrong_beside_them() throws Exception {
    ResultActions page = check(HEAD + "IMP-4,Good,,,,,\nIMP-5,=Bad,,,95 degrees,,\n");
    page.andExpect(content().string(not(containsString("Take it in"))));

    web.perform(get("/import/" + ticket(page) + "/problems").with(Someone.as(Role.BREEDER)))
        .andExpect(status().isOk())
        .andExpect(
            content()
                .string(
                    "\ufeffrow,column,problem,site,name,place,hardiness_zone,latitude,longitude,"
                        + "cooperator\r\n"
                        + "3,latitude,\"Write a number with a decimal point, for example 1.5; leave"
                        + " unknown empty.\",IMP-5,'=Bad,,,95 degrees,,\r\n"));
  }

  private ResultActions check(String file) throws Exception {
    MockMultipartFile sent =
        new MockMultipartFile(
            "file", "sites.csv", "text/csv", file.getBytes(StandardCharsets.UTF_8));
    return web.perform(
            multipart("/import")
                .file(sent)
                .param("sheet", "sites")
                .with(Someone.as(Role.BREEDER))
                .with(csrf()))
        .andExpect(status().isOk());
  }

  private ResultActions take(String ticket, String sheet, RequestPostProcessor who)
      throws Exception {
    return web.perform(
        post("/import").param("sheet", sheet).param("checked", ticket).with(who).with(csrf()));
  }

  private static String ticket(ResultActions page) throws Exception {
    Matcher ticket = TICKET.matcher(page.andReturn().getResponse().getContentAsString());
    assertThat(ticket.find()).isTrue();
    return ticket.group(1);
  }
}
