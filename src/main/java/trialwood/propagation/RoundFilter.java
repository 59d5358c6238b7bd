package trialwood.propagation;

import org.jspecify.annotations.Nullable;

/** Which part of the benches a round covers; what is null covers all. */
public record RoundFilter(@Nullable String bench, @Nullable String run, @Nullable String block) {

  boolean covers(RoundTray tray) {
    return covers(bench, tray.bench()) && covers(run, tray.run()) && covers(block, tray.block());
  }

  private static boolean covers(@Nullable String wanted, @Nullable String is) {
    return wanted == null || wanted.equals(is);
  }
}
