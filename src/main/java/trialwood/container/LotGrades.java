package trialwood.container;

import java.util.List;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;

/** All gradings of lots. */
public interface LotGrades extends JpaRepository<LotGrade, UUID> {

  List<LotGrade> findByLotIdOrderByOnDate(UUID lotId);

  boolean existsBySupersedesId(UUID earlier);
}
