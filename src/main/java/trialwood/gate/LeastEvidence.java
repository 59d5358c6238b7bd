package trialwood.gate;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trialwood.candidate.Stage;
import trialwood.evidence.Evidence;

/**
 * How much evidence a criterion asks for before it speaks at all; nothing said, nothing asked.
 *
 * @param units cuttings or plants
 * @param replicates trays or plots
 */
@Embeddable
public record LeastEvidence(
    @Column(name = "least_units") @Nullable Integer units,
    @Column(name = "least_replicates") @Nullable Integer replicates,
    @Column(name = "least_sites") @Nullable Integer sites,
    @Column(name = "least_seasons") @Nullable Integer seasons) {

  public static final LeastEvidence NONE = new LeastEvidence(null, null, null, null);

  /** 3 trays and 72 cuttings; empty where nothing is asked. */
  String asked(Stage gate) {
    List<String> parts = new ArrayList<>();
    add(parts, replicates, replicate(gate));
    add(parts, units, unit(gate));
    add(parts, sites, "site");
    add(parts, seasons, "season");
    return String.join(" and ", parts);
  }

  /** 1 of 3 trays, 24 of 72 cuttings; empty where there is enough. */
  String lacking(Stage gate, Evidence evidence) {
    List<String> parts = new ArrayList<>();
    lack(parts, evidence.replicates(), replicates, replicate(gate));
    lack(parts, evidence.n(), units, unit(gate));
    lack(parts, evidence.sites(), sites, "site");
    lack(parts, evidence.seasons(), seasons, "season");
    return String.join(", ", parts);
  }

  private static void add(List<String> parts, @Nullable Integer least, String what) {
    if (least != null) {
      parts.add(least + " " + plural(least, what));
    }
  }

  private static void lack(List<String> parts, int there, @Nullable Integer least, String what) {
    if (least != null && there < least) {
      parts.add("%d of %d %s".formatted(there, least, plural(least, what)));
    }
  }

  private static String plural(int number, String what) {
    return number == 1 ? what : what + "s";
  }

  private static String unit(Stage gate) {
    return gate == Stage.PROPAGATION ? "cutting" : "plant";
  }

  private static String replicate(Stage gate) {
    return gate == Stage.PROPAGATION ? "tray" : "plot";
  }
}
