package trialwood.propagation;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;

/** All choices between the usual and the nursery's own prior, never overwritten. */
public interface TrayLikenessChoices extends JpaRepository<TrayLikenessChoice, UUID> {

  Optional<TrayLikenessChoice> findFirstByOnDateLessThanEqualOrderByOnDateDescIdDesc(LocalDate day);

  List<TrayLikenessChoice> findAllByOrderByOnDateDescIdDesc();
}
