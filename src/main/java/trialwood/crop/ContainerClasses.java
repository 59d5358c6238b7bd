package trialwood.crop;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;

/** The container classes in use. */
public interface ContainerClasses extends JpaRepository<ContainerClass, UUID> {

  Optional<ContainerClass> findByCode(String code);

  List<ContainerClass> findAllByOrderByHighestLitres();
}
