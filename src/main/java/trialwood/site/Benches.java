package trialwood.site;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;

/** The benches of all houses. */
public interface Benches extends JpaRepository<Bench, UUID> {

  Optional<Bench> findByCode(String code);

  List<Bench> findAllByOrderByCode();
}
