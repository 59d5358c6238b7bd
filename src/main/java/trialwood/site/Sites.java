package trialwood.site;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;

/** The sites, own and cooperating. */
public interface Sites extends JpaRepository<Site, UUID> {

  Optional<Site> findByCode(String code);

  List<Site> findAllByOrderByCode();
}
