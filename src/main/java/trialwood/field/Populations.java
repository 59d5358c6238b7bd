package trialwood.field;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;

/** The planted populations. */
public interface Populations extends JpaRepository<Population, UUID> {

  Optional<Population> findByCode(String code);

  List<Population> findAllByOrderByPlantedOnDesc();
}
