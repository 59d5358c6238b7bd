package trialwood.container;

import java.time.LocalDate;
import trialwood.evidence.Evidence;
import trialwood.evidence.EvidenceBuilder;
import trialwood.web.Measures;

/** The lot that an answer was read from. */
record CitedLot(String label, LocalDate day) {

  Evidence closes(EvidenceBuilder evidence, Measures measures) {
    return evidence
        .citing("lot %s, %s".formatted(label, measures.date(day)), "/containers/" + label)
        .build();
  }
}
