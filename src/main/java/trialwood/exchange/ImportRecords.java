package trialwood.exchange;

import java.util.List;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;

/** The files that were taken in. */
public interface ImportRecords extends JpaRepository<ImportRecord, UUID> {

  List<ImportRecord> findTop50ByOrderByRecordedAtDesc();
}
