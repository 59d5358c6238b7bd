package trialwood.note;

import java.util.Locale;
import java.util.UUID;

/**
 * What a note is about.
 *
 * @param name as people call it
 * @param place address of its page up to the code
 * @param code with which its page is found
 */
public record Subject(Kind kind, UUID id, String name, String place, String code) {

  /** The kinds of things that can have notes; in lower case, part of the address. */
  public enum Kind {
    UNIT,
    ACCESSION,
    RUN,
    SITE,
    HOUSE;

    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }
}
