package trialwood.dossier;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Where a candidate comes from, as its field tag and its pedigree say. */
public record Origin(
    UUID accessionId,
    String code,
    @Nullable String talkName,
    String botanicalName,
    @Nullable String seedParent,
    @Nullable String pollenParent,
    @Nullable String pollination,
    @Nullable String population,
    @Nullable String populationName,
    @Nullable String site,
    @Nullable LocalDate plantedOn,
    @Nullable Integer inRow,
    @Nullable Integer position,
    @Nullable LocalDate taggedOn,
    @Nullable String taggedBy,
    @Nullable String seen) {

  /** The seed parent and how it was pollinated, in words. */
  public String parents() {
    String mother = seedParent == null ? "an unknown seed parent" : "seed parent " + seedParent;
    if (pollenParent != null) {
      return mother + ", pollen parent " + pollenParent;
    }
    return mother + ("OPEN".equals(pollination) ? ", open-pollinated" : ", pollen parent unknown");
  }

  /** What is lacking before the origin is told, as sentences; none when it is. */
  public List<String> missing() {
    List<String> missing = new ArrayList<>();
    if (seedParent == null) {
      missing.add("The seed parent is not recorded.");
    }
    if (taggedOn == null) {
      missing.add("No field tag says where and when it was selected.");
    } else if (taggedBy == null) {
      missing.add("The field tag does not say who selected it.");
    }
    return missing;
  }
}
