package trialwood.propagation.web;

import static org.hamcrest.Matchers.containsString;
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
import org.springframework.context.annotation.Import;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.transaction.annotation.Transactional;
import trialwood.people.Role;
import trialwood.propagation.Bench;
import trialwood.propagation.StickingRun;
import trialwood.propagation.Tray;
import trialwood.testing.ApplicationTest;
import trialwood.testing.Someone;

@ApplicationTest
@Import(Bench.class)
@Transactional
class TrayMovePagesTest {

  @Autowired MockMvc web;
  @Autowired Bench bench;
  @Autowired JdbcClient jdbc;

  @BeforeEach
  void two_trays_of_one_batch_and_a_stranger() {
    StickingRun run = bench.run("R22", Bench.STUCK, bench.accession("CK-B"));
    UUID white = bench.accession("A18-04");
    Tray tray = bench.tray(run, "22-A-1", white, 14);
    bench.another(run, tray, "22-A-2", white, 24, 8);
    bench.tray(run, "22-B-1", bench.accession("B18-01"), 5);
    bench.flush();
  }

  @Test
  void a_split_stands_on_both_pages_and_can_be_undone() throws Exception {
    send(
            "/bench/trays/22-A-1/split",
            "number",
            "6",
            "to",
            "22-A-1B",
            "cells",
            "24",
            "on",
            "2022-06-20")
        .andExpect(redirectedUrl("/bench/trays/22-A-1"));
    bench.flush();
    page("/bench/trays/22-A-1", "6 cuttings went to 22-A-1B", "counts for 8 now", "Take back");
    page("/bench/trays/22-A-1B", "6 cuttings began this tray, from 22-A-1");
  }

  @Test
  void both_labels_are_read_off_the_trays() throws Exception {
    refused("22-A-2", "22-A-1", "This label is not that of tray 22-A-1.");
    refused("22-A-1", "22-B-1", "22-B-1 and 22-A-1 hold different accessions.");
    refused("22-A-1", "22-X-1", "No tray 22-X-1 is on record.");
    refused("22-A-1", "", "Scan or type the label.");
    send("/bench/trays/22-A-1/bring", "to", "22-a-1", "from", "22-A-2", "on", "2022-06-20")
        .andExpect(redirectedUrl("/bench/trays/22-A-1"));
    bench.flush();
    page("/bench/trays/22-A-1", "8 cuttings came from 22-A-2", "counts for 22 now");
  }

  @Test
  void a_code_or_the_square_of_a_label_is_read_as_the_label() throws Exception {
    String square = "HTTPS://NURSERY.EXAMPLE/S/" + code("22-A-1");
    refused("22-A-1", code("22-B-1"), "22-B-1 and 22-A-1 hold different accessions.");
    refused("22-A-1", "http://nursery.example/s/zzzzz", "No tray http://nursery.example/s/zzzzz");
    send(
            "/bench/trays/22-A-2/split",
            "number",
            "3",
            "to",
            square,
            "cells",
            "24",
            "on",
            "2022-06-20")
        .andExpect(content().string(containsString("This is the label of 22-A-1.")));
    send("/bench/trays/22-A-1/bring", "to", square, "from", code("22-A-2"), "on", "2022-06-20")
        .andExpect(redirectedUrl("/bench/trays/22-A-1"));
    bench.flush();
    page("/bench/trays/22-A-1", "8 cuttings came from 22-A-2");
  }

  private String code(String label) {
    return jdbc.sql("select code from short_code where label_key = ?")
        .param(label)
        .query(String.class)
        .single();
  }

  private void refused(String to, String from, String sentence) throws Exception {
    send("/bench/trays/22-A-1/bring", "to", to, "from", from, "on", "2022-06-20")
        .andExpect(status().isOk())
        .andExpect(content().string(containsString(sentence)));
  }

  private void page(String address, String... words) throws Exception {
    ResultActions shown = web.perform(get(address).with(Someone.as(Role.BENCH)));
    for (String each : words) {
      shown.andExpect(content().string(containsString(each)));
    }
  }

  private ResultActions send(String address, String... typed) throws Exception {
    MockHttpServletRequestBuilder form =
        post(address)
            .with(Someone.as(Role.BENCH))
            .with(csrf())
            .param("formKey", UUID.randomUUID().toString());
    for (int i = 0; i < typed.length; i += 2) {
      form.param(typed[i], typed[i + 1]);
    }
    return web.perform(form);
  }
}
