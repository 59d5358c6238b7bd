package trialwood.season;

import java.nio.charset.StandardCharsets;

/**
 * Folds the lines of a calendar so that none is longer than 75 octets, as RFC 5545, section 3.1,
 * asks. A library that counts letters makes them longer as soon as one is not ASCII.
 */
final class FoldedLines {

  private static final int OCTETS = 75;
  private static final String LINE_BREAK = "\r\n";

  private FoldedLines() {}

  static String of(String unfolded) {
    StringBuilder folded = new StringBuilder();
    for (String line : unfolded.split(LINE_BREAK)) {
      fold(line, folded);
    }
    return folded.toString();
  }

  private static void fold(String line, StringBuilder folded) {
    int octets = 0;
    for (int at = 0; at < line.length(); ) {
      String letter = Character.toString(line.codePointAt(at));
      int needed = letter.getBytes(StandardCharsets.UTF_8).length;
      if (octets + needed > OCTETS) {
        folded.append(LINE_BREAK).append(' ');
        octets = 1;
      }
      folded.append(letter);
      octets += needed;
      at += letter.length();
    }
    folded.append(LINE_BREAK);
  }
}
