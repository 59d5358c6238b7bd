package trialwood.field.web;

import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import trialwood.field.NewTag;
import trialwood.lineage.Accession;
import trialwood.web.Entry;
import trialwood.web.Form;

/** A field tag as the breeder types it. */
record TagForm(
    @Nullable UUID formKey,
    @Nullable String accession,
    @Nullable String row,
    @Nullable String position,
    @Nullable String on,
    @Nullable String seen,
    @Nullable String seedParent,
    @Nullable String talkName,
    @Nullable String description,
    @Nullable Boolean outstanding,
    @Nullable String by)
    implements Form {

  static TagForm fresh(LocalDate today) {
    return new TagForm(UUID.randomUUID(), "", "", "", today.toString(), "", "", "", "", null, null);
  }

  /**
   * @param parent the accession behind the seed parent's code, if one was typed and found
   */
  NewTag read(LocalDate today, Optional<Accession> parent) {
    Entry entry = new Entry();
    String code = entry.words("accession", accession, "Give the candidate its code.");
    int inRow = entry.count("row", row);
    int at = entry.count("position", position);
    LocalDate day = entry.day("on", on, today);
    String saw = entry.words("seen", seen, "Say in a few words what was seen.");
    if (Entry.wordsIfAny(seedParent) != null && parent.isEmpty()) {
      entry.wrong("seedParent", "There is no accession “%s”.".formatted(seedParent));
    }
    UUID person = entry.person("by", by);
    entry.orRefuse();
    return new NewTag(
        code,
        inRow,
        at,
        day,
        person,
        saw,
        parent.map(Accession::id).orElse(null),
        Entry.wordsIfAny(talkName),
        Entry.wordsIfAny(description),
        Boolean.TRUE.equals(outstanding));
  }
}
