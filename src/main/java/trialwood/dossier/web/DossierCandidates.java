package trialwood.dossier.web;

import java.util.Objects;
import java.util.UUID;
import org.springframework.stereotype.Component;
import trialwood.candidate.Candidates;
import trialwood.lineage.Accession;
import trialwood.lineage.Accessions;
import trialwood.web.NotFound;

/** Whose dossiers there are: every candidate has one, from its field tag on. */
@Component
class DossierCandidates {

  private final Accessions accessions;
  private final Candidates candidates;

  DossierCandidates(Accessions accessions, Candidates candidates) {
    this.accessions = accessions;
    this.candidates = candidates;
  }

  /**
   * @throws NotFound when the code names no candidate
   */
  Accession named(String code) {
    return accessions
        .named(code)
        .filter(accession -> candidates.existsById(id(accession)))
        .orElseThrow(NotFound.of("dossier of " + code));
  }

  static UUID id(Accession candidate) {
    return Objects.requireNonNull(candidate.id());
  }
}
