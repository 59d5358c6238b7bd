package trialwood.container.web;

import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import trialwood.web.Form;

/**
 * A measuring sheet as it was typed.
 *
 * @param traits codes of its columns, in their order
 * @param lines one a plant
 * @param block pasted from a spreadsheet, to be put into the boxes
 * @param checked what was found when the sheet as a whole was asked about
 */
record SheetForm(
    @Nullable UUID formKey,
    @Nullable String on,
    @Nullable UUID by,
    List<String> traits,
    List<Line> lines,
    @Nullable String block,
    @Nullable String asked,
    @Nullable String checked)
    implements Form {

  SheetForm {
    traits = Objects.requireNonNullElse(traits, List.of());
    lines = Objects.requireNonNullElse(lines, List.of());
  }

  /**
   * One plant.
   *
   * @param cells what stands under each trait
   * @param checked somebody looked at the plant again
   * @param found what they found
   */
  record Line(
      @Nullable UUID plant, List<String> cells, @Nullable Boolean checked, @Nullable String found) {

    Line {
      cells = Objects.requireNonNullElse(cells, List.of());
    }

    boolean isChecked() {
      return Boolean.TRUE.equals(checked);
    }

    static Line empty(UUID plant, int columns) {
      return new Line(plant, Collections.nCopies(columns, ""), false, "");
    }
  }

  /** The lines of these plants alone, to be sent anew. */
  SheetForm keeping(Set<UUID> plants) {
    return new SheetForm(
        UUID.randomUUID(),
        on,
        by,
        traits,
        lines.stream().filter(line -> plants.contains(line.plant())).toList(),
        "",
        "",
        "");
  }
}
