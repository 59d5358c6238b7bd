package trialwood.container;

import jakarta.persistence.LockModeType;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Query;

/** All lots. */
public interface Lots extends JpaRepository<Lot, UUID> {

  /** The lot, held until the transaction ends: two people cannot both take its last plants. */
  @Lock(LockModeType.PESSIMISTIC_WRITE)
  @Query("select lot from Lot lot where lot.unitId = :id")
  Optional<Lot> locked(UUID id);

  /** The ledger at the end of a day, without what was superseded. */
  @Query(
      """
      select new trialwood.container.Ledger(
        lot.potted,
        (select coalesce(sum(l.number), 0) from LotLoss l
         where l.lotId = lot.unitId and l.onDate <= :day
           and not exists (select 1 from LotLoss later where later.supersedesId = l.id)),
        (select coalesce(sum(case when o.way = DISPOSED then o.number else 0 end), 0)
         from LotOutgoing o
         where o.lotId = lot.unitId and o.onDate <= :day
           and not exists (select 1 from LotOutgoing later where later.supersedesId = o.id)),
        (select coalesce(sum(case when o.way = TRANSFERRED then o.number else 0 end), 0)
         from LotOutgoing o
         where o.lotId = lot.unitId and o.onDate <= :day
           and not exists (select 1 from LotOutgoing later where later.supersedesId = o.id)),
        (select coalesce(sum(case when o.way = SHIFTED then o.number else 0 end), 0)
         from LotOutgoing o
         where o.lotId = lot.unitId and o.onDate <= :day
           and not exists (select 1 from LotOutgoing later where later.supersedesId = o.id)))
      from Lot lot
      where lot.unitId = :lot
      """)
  Ledger ledger(UUID lot, LocalDate day);
}
