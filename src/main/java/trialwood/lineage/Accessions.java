package trialwood.lineage;

import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;
import trialwood.record.CodeKey;

/** All accessions. */
public interface Accessions extends JpaRepository<Accession, UUID> {

  boolean existsByCodeKey(String codeKey);

  Optional<Accession> findByCodeKey(String codeKey);

  /** Finds a code however it was typed: capitals, blanks, zeros and the letter O do not matter. */
  default Optional<Accession> named(String typed) {
    return findByCodeKey(CodeKey.of(typed));
  }
}
