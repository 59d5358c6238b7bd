package trialwood.note.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import jakarta.persistence.EntityManager;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.transaction.annotation.Transactional;
import trialwood.house.House;
import trialwood.house.Houses;
import trialwood.note.Pictures;
import trialwood.people.Role;
import trialwood.testing.ApplicationTest;
import trialwood.testing.Someone;

@ApplicationTest
@Transactional
class NotePagesTest {

  private static final String PAGE = "/notes/house/mist house";

  @Autowired private MockMvc pages;
  @Autowired private Houses houses;
  @Autowired private JdbcClient jdbc;
  @Autowired private EntityManager records;

  @BeforeEach
  void a_house() {
    houses.saveAndFlush(new House("mist house", true, null));
  }

  private ResultActions noted(String words, MockMultipartFile... files) throws Exception {
    return noted(words, null, files);
  }

  private ResultActions noted(String words, UUID corrects, MockMultipartFile... files)
      throws Exception {
    var request = multipart(PAGE);
    for (MockMultipartFile file : files) {
      request.file(file);
    }
    request.with(Someone.as(Role.BENCH)).with(csrf());
    request.param("formKey", UUID.randomUUID().toString());
    request.param("words", words).param("on", "yesterday");
    if (corrects != null) {
      request.param("corrects", corrects.toString()).param("supersedeReason", "wrong bench");
    }
    ResultActions answer = pages.perform(request);
    records.flush();
    return answer;
  }

  private static MockMultipartFile picture() {
    return new MockMultipartFile(
        "photographs", "IMG_1.jpg", "image/jpeg", Pictures.of("jpg", 80, 40));
  }

  private UUID only(String table) {
    return jdbc.sql("select id from " + table).query(UUID.class).single();
  }

  @Test
  void a_note_is_kept_with_its_photograph() throws Exception {
    noted("nozzle 4 drips", picture()).andExpect(redirectedUrl("/notes/house/mist%20house"));
    UUID photograph = only("photograph");
    pages
        .perform(get(PAGE).with(Someone.as(Role.READER)))
        .andExpect(content().string(containsString("nozzle 4 drips")))
        .andExpect(content().string(containsString("/photographs/" + photograph + "/small")));
    pages
        .perform(get("/photographs/" + photograph).with(Someone.as(Role.READER)))
        .andExpect(status().isOk())
        .andExpect(content().contentType("image/jpeg"));
  }

  @Test
  void what_is_no_picture_is_refused_in_words_and_nothing_is_kept() throws Exception {
    MockMultipartFile script =
        new MockMultipartFile("photographs", "x.jpg", "image/jpeg", "<script>".getBytes());
    noted("see the picture", script)
        .andExpect(status().isOk())
        .andExpect(content().string(containsString("Choose JPEG or PNG pictures")))
        .andExpect(content().string(containsString("see the picture")));
    assertThat(jdbc.sql("select count(*) from note").query(Long.class).single()).isZero();
  }

  @Test
  void a_note_without_words_and_picture_is_refused() throws Exception {
    noted(" ").andExpect(content().string(containsString("Write something")));
  }

  @Test
  void a_corrected_note_stays_readable() throws Exception {
    noted("bench 2 is dry");
    noted("bench 3 is dry", only("note")).andExpect(status().is3xxRedirection());
    pages
        .perform(get(PAGE).with(Someone.as(Role.READER)))
        .andExpect(content().string(containsString("bench 2 is dry")))
        .andExpect(content().string(containsString("bench 3 is dry")))
        .andExpect(content().string(containsString("replaces an earlier note: wrong bench")));
  }

  @Test
  void cooperators_see_neither_notes_nor_photographs() throws Exception {
    noted("private", picture());
    for (String page : new String[] {PAGE, "/photographs/" + only("photograph")}) {
      pages.perform(get(page).with(Someone.as(Role.COOPERATOR))).andExpect(status().isForbidden());
    }
  }

  @Test
  void what_is_not_there_has_no_notes() throws Exception {
    for (String page : new String[] {"/notes/house/x", "/notes/moon/x", "/notes/unit/x"}) {
      pages.perform(get(page).with(Someone.as(Role.BENCH))).andExpect(status().isNotFound());
    }
  }
}
