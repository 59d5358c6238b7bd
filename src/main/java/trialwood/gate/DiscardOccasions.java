package trialwood.gate;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import org.jspecify.annotations.Nullable;

/**
 * On how many independent valid occasions in a row the discard rule must hold.
 *
 * @param usual nothing said is one
 * @param outstanding where the breeder marked something outstanding; nothing said is as usual
 */
@Embeddable
public record DiscardOccasions(
    @Column(name = "discard_occasions") @Nullable Integer usual,
    @Column(name = "discard_occasions_outstanding") @Nullable Integer outstanding) {

  public static final DiscardOccasions ONE = new DiscardOccasions(null, null);

  int needed(boolean markedOutstanding) {
    int least = usual == null ? 1 : usual;
    return markedOutstanding && outstanding != null ? outstanding : least;
  }
}
