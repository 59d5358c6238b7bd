package trialwood.desk;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import trialwood.lineage.Accession;
import trialwood.web.EditForm;
import trialwood.web.Entry;

/** What people call an accession and say of it. Its code and its parents stay. */
record AccessionForm(
    @Nullable UUID formKey,
    @Nullable Integer version,
    @Nullable String talkName,
    @Nullable String description,
    @Nullable String origin,
    @Nullable Boolean usedAsParent)
    implements EditForm {

  static AccessionForm of(Accession accession) {
    return new AccessionForm(
        UUID.randomUUID(),
        accession.version(),
        accession.talkName(),
        accession.description(),
        accession.origin(),
        accession.isUsedAsParent());
  }

  @Override
  public Map<String, String> words() {
    Map<String, String> words = new LinkedHashMap<>();
    words.put("Talk name", text(talkName));
    words.put("Description", text(description));
    words.put("Origin", text(origin));
    words.put("Used as a parent", Boolean.TRUE.equals(usedAsParent) ? "yes" : "no");
    return words;
  }

  /**
   * @throws trialwood.record.Refused when a text is too long, or somebody else was faster
   */
  void change(Accession accession) {
    sees(accession.version());
    accession.describe(Entry.wordsIfAny(talkName), Entry.wordsIfAny(description));
    accession.comesFrom(Entry.wordsIfAny(origin));
    accession.useAsParent(Boolean.TRUE.equals(usedAsParent));
  }

  private static String text(@Nullable String text) {
    return text == null ? "" : text.strip();
  }
}
