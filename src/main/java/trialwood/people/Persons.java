package trialwood.people;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;

/** The persons of the nursery. */
public interface Persons extends JpaRepository<Person, UUID> {

  Optional<Person> findByInitials(String initials);

  /** Those who can be picked on a form, by initials. */
  List<Person> findByActiveTrueOrderByInitials();

  List<Person> findAllByOrderByInitials();
}
