package trialwood.candidate;

import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;

/** All candidates. */
public interface Candidates extends JpaRepository<Candidate, UUID> {}
