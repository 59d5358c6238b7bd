package trialwood.lineage;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Where the seed came from, as far as it is known. */
public record Parentage(
    @Nullable UUID seedParentId, @Nullable UUID pollenParentId, @Nullable Pollination pollination) {

  /** A bought cultivar, a found plant. */
  public static Parentage unknown() {
    return new Parentage(null, null, null);
  }

  /** A seedling of one seed parent, pollen unknown. */
  public static Parentage openPollinated(UUID seedParentId) {
    return new Parentage(seedParentId, null, Pollination.OPEN);
  }
}
