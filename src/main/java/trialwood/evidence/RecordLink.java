package trialwood.evidence;

/**
 * A record that evidence came from.
 *
 * @param text what it is, {@code run L22, tray 3}
 * @param href its page, from the root of the application
 */
public record RecordLink(String text, String href) {}
