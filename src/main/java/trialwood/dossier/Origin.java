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
    @Nullable String inWords,
    @Nullable String population,
    @Nullable String populationName,
    @Nullable String site,
    @Nullable LocalDate plantedOn,
    @Nullable Integer inRow,
    @Nullable Integer position,
    @Nullable LocalDate taggedOn,
    @Nullable String taggedBy,
    @Nullable String seen) {

  /** What the records know of its parents, in words; empty when they know of none. */
  public String parents() {
    String father = father();
    return seedParent == null
        ? father
        : "seed parent " + seedParent + (father.isEmpty() ? "" : ", " + father);
  }

  private String father() {
    if (pollenParent != null) {
      return "pollen parent " + pollenParent;
    }
    return switch (pollination == null ? "" : pollination) {
      case "OPEN" -> "open-pollinated";
      case "SELF" -> "selfed";
      default -> "";
    };
  }

  /** The items that nobody recorded, by name; nothing is put in their place. */
  public List<String> blanks() {
    List<String> blanks = new ArrayList<>();
    if (seedParent == null) {
      blanks.add("seed parent");
    }
    if (father().isEmpty()) {
      blanks.add("pollen parent");
    }
    if (taggedOn == null) {
      blanks.add("field tag");
    } else if (taggedBy == null) {
      blanks.add("who selected it");
    }
    return blanks;
  }

  /**
   * What is lacking before the origin is told, as sentences; none when it is. A sport or a chance
   * seedling is told by its origin in words; an unknown pollen parent is no lack.
   */
  public List<String> missing() {
    List<String> missing = new ArrayList<>();
    if (seedParent == null && inWords == null) {
      missing.add("Neither a seed parent nor the origin in words is recorded.");
    }
    if (taggedOn == null) {
      missing.add("No field tag says where and when it was selected.");
    } else if (taggedBy == null) {
      missing.add("The field tag does not say who selected it.");
    }
    return missing;
  }
}
