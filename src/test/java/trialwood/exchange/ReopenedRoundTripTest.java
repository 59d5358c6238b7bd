package trialwood.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import trialwood.candidate.Candidate;
import trialwood.candidate.Candidates;
import trialwood.candidate.Reopening;
import trialwood.candidate.Stage;
import trialwood.candidate.Standing;
import trialwood.lineage.Accessions;
import trialwood.people.Persons;
import trialwood.record.Recorder;

/** A discard that was taken back comes back so, and what was decided after it too. */
@ExchangeTest
class ReopenedRoundTripTest {

  private static final List<String> GROUND =
      List.of("crops", "sites", "people", "traits", "accessions", "gate-policies", "populations");
  private static final String DECISIONS = "accession,gate,on,choice,hold_until,reason,by\n";

  @Autowired private Flyway flyway;
  @Autowired private Sheets sheets;
  @Autowired private Import imports;
  @Autowired private Export export;
  @Autowired private Accessions accessions;
  @Autowired private Candidates candidates;
  @Autowired private Persons persons;
  @Autowired private Reopening reopening;
  @Autowired private Recorder recorder;

  @BeforeEach
  void an_empty_record() {
    flyway.clean();
    flyway.migrate();
  }

  @Test
  void a_reopened_candidate_stands_where_it_stood() throws IOException {
    GROUND.forEach(name -> take(name, DemoFiles.of(sheet(name))));
    take(
        "field-tags",
        """
        accession,population,row,position,on,by,seen,talk_name,seed_parent,description,outstanding
        Q18-01,P18,1,1,2020-08-27,RA,Upright,,,,no
        Q18-02,P18,1,2,2020-08-27,RA,Upright,,,,no
        """);
    take(
        "decisions", DECISIONS + discard("Q18-01", "2020-10-30") + discard("Q18-02", "2020-10-30"));
    reopen("Q18-01");
    reopen("Q18-02");
    take("decisions", DECISIONS + "Q18-01,field,2022-10-30,advance,,Worth it.,RA\n");
    take("decisions", DECISIONS + discard("Q18-02", "2022-10-30"));

    Map<String, byte[]> files = new LinkedHashMap<>();
    for (String name : List.of("field-tags", "candidate-events", "decisions")) {
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      export.write(sheet(name), out);
      files.put(name, out.toByteArray());
    }
    an_empty_record();
    GROUND.forEach(name -> take(name, DemoFiles.of(sheet(name))));
    files.forEach(this::take);

    assertThat(candidate("Q18-01").stage()).isEqualTo(Stage.PROPAGATION);
    assertThat(candidate("Q18-01").standing()).isEqualTo(Standing.ACTIVE);
    assertThat(candidate("Q18-02").standing()).isEqualTo(Standing.DISCARDED);
  }

  private static String discard(String code, String on) {
    return "%s,field,%s,discard,,Too like its neighbour.,RA\n".formatted(code, on);
  }

  private void reopen(String code) {
    UUID breeder = persons.findByInitials("RA").orElseThrow().id();
    reopening.reopen(
        candidate(code).accessionId(),
        LocalDate.of(2021, 8, 1),
        "The neighbour was mislabelled.",
        recorder.by(breeder));
  }

  private Candidate candidate(String code) {
    return candidates.findById(accessions.named(code).orElseThrow().id()).orElseThrow();
  }

  private Sheet sheet(String name) {
    return sheets.named(name).orElseThrow();
  }

  private void take(String name, String text) {
    take(name, text.getBytes(StandardCharsets.UTF_8));
  }

  private void take(String name, byte[] file) {
    ImportResult result = imports.take(sheet(name), sheet(name).fileName(), file);
    assertThat(result.problems()).as(name).isEmpty();
  }
}
