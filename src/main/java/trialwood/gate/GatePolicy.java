package trialwood.gate;

import jakarta.persistence.CascadeType;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.OneToMany;
import jakarta.persistence.OrderBy;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.hibernate.annotations.UuidGenerator;
import org.jspecify.annotations.Nullable;
import trialwood.candidate.Stage;
import trialwood.record.Refused;

/** What a crop's gates ask, in one version. A change makes a new version. */
@Entity
public class GatePolicy {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  private @Nullable UUID id;

  private UUID cropId;
  private int number;
  private LocalDate inForceFrom;

  @OneToMany(cascade = CascadeType.PERSIST, fetch = FetchType.EAGER)
  @JoinColumn(name = "policy_id", nullable = false, updatable = false)
  @OrderBy("place")
  private List<Criterion> criteria = new ArrayList<>();

  /** A policy in which nothing is asked yet. */
  public GatePolicy(UUID cropId, int number, LocalDate inForceFrom) {
    this.cropId = cropId;
    this.number = number;
    this.inForceFrom = inForceFrom;
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected GatePolicy() {}

  /** Asks one thing more. */
  public void add(Criterion criterion) {
    if (at(criterion.gate()).stream().anyMatch(c -> c.code().equals(criterion.code()))) {
      throw new Refused("criterion", criterion.code() + " is asked twice at this gate.");
    }
    criterion.standAt(criteria.size() + 1);
    criteria.add(criterion);
  }

  /** What is asked at the gate of the given stage, in order. */
  public List<Criterion> at(Stage gate) {
    return criteria.stream().filter(criterion -> criterion.gate() == gate).toList();
  }

  public @Nullable UUID id() {
    return id;
  }

  public UUID cropId() {
    return cropId;
  }

  public int number() {
    return number;
  }

  public LocalDate inForceFrom() {
    return inForceFrom;
  }
}
