package trialwood.propagation;

/**
 * What has been taken out of a tray.
 *
 * @param number all of them
 * @param rooted those that had roots
 */
public record TakenSoFar(int number, int rooted) {}
