package trialwood.record;

import jakarta.persistence.EntityManager;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.hibernate.envers.AuditReaderFactory;
import org.hibernate.envers.query.AuditEntity;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** What was said before of a record that people edit by hand. */
@Component
public class History {

  private final EntityManager entities;

  History(EntityManager entities) {
    this.entities = entities;
  }

  /**
   * A record as it stood from then on.
   *
   * @param username the account that said so
   */
  public record Past<T>(Instant at, String username, T then) {}

  /** Everything that was said of one record, newest first: one statement. */
  @Transactional(readOnly = true)
  public <T> List<Past<T>> of(Class<T> kind, UUID id) {
    List<?> revisions =
        AuditReaderFactory.get(entities)
            .createQuery()
            .forRevisionsOfEntity(kind, false, true)
            .add(AuditEntity.id().eq(id))
            .addOrder(AuditEntity.revisionNumber().desc())
            .getResultList();
    return revisions.stream().map(Object[].class::cast).map(row -> past(kind, row)).toList();
  }

  private static <T> Past<T> past(Class<T> kind, Object[] row) {
    Revision revision = (Revision) row[1];
    return new Past<>(revision.at(), revision.username(), kind.cast(row[0]));
  }
}
