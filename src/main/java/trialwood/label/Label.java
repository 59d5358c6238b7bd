package trialwood.label;

import java.util.List;

/**
 * One label.
 *
 * @param payload what the square says to a scanner
 * @param code the short code as people read it
 * @param lines the most important first; the first two are set in bold
 */
public record Label(String payload, String code, List<String> lines) {}
