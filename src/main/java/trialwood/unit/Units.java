package trialwood.unit;

import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;
import trialwood.record.CodeKey;

/** All units. */
public interface Units extends JpaRepository<Unit, UUID> {

  Optional<Unit> findByLabelKey(String labelKey);

  boolean existsByLabelKey(String labelKey);

  @Query(
      value =
          "select u.* from unit u join short_code s on s.label_key = u.label_key where s.code = :code",
      nativeQuery = true)
  Optional<Unit> findByShortCode(String code);

  /** Finds a label however it was typed. */
  default Optional<Unit> labelled(String typed) {
    return findByLabelKey(CodeKey.of(typed));
  }

  /**
   * Finds a unit by what stands on its label: the label, the short code, or what its square says.
   */
  default Optional<Unit> scanned(String read) {
    return labelled(read)
        .or(() -> ShortCode.readIfAny(read).flatMap(code -> findByShortCode(code.text())));
  }
}
