package trialwood.propagation;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import java.util.UUID;
import org.hibernate.annotations.UuidGenerator;
import org.jspecify.annotations.Nullable;
import trialwood.record.Check;

/** The bench on which a block of a run stands: a part of the mist and heat gradient. */
@Entity
public class BenchBlock {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  private @Nullable UUID id;

  private UUID runId;
  private String block;
  private UUID benchId;

  public BenchBlock(UUID runId, String block, UUID benchId) {
    this.runId = runId;
    this.block = block.strip();
    this.benchId = benchId;
    Check.that()
        .holds(!this.block.isEmpty(), "block", "Name the block, for example 1.")
        .fits(this.block, 10, "block")
        .orRefuse();
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected BenchBlock() {}

  public UUID runId() {
    return runId;
  }

  public String block() {
    return block;
  }

  public UUID benchId() {
    return benchId;
  }
}
