package trialwood.container.web;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import trialwood.container.web.PlantBook.Standing;
import trialwood.container.web.SheetForm.Line;
import trialwood.crop.Trait;

/**
 * A block of cells from a spreadsheet, laid over a measuring sheet. Its first line may name traits;
 * under them, or where the first column holds labels, a line goes to the plant it names. Without
 * names it begins at the first plant and the first trait.
 *
 * @param lines the sheet with the block in it
 * @param placed cells that went into a box
 * @param astray what has no place on the sheet, in words
 */
record PastedBlock(List<Line> lines, int placed, List<String> astray) {

  private static final int MOST_LINES = 1_000;
  private static final int NOWHERE = -1;

  static PastedBlock of(String text, List<Trait> columns, List<Standing> plants) {
    List<List<String>> rows =
        text.lines()
            .filter(line -> !line.isBlank())
            .limit(MOST_LINES)
            .map(PastedBlock::cells)
            .toList();
    boolean headed =
        !rows.isEmpty() && rows.get(0).stream().anyMatch(cell -> column(cell, columns) >= 0);
    List<List<String>> body = headed ? rows.subList(1, rows.size()) : rows;
    boolean named =
        headed
            ? column(rows.get(0).get(0), columns) < 0
            : body.stream().allMatch(row -> labelled(row.get(0), plants));
    List<String> astray = new ArrayList<>();
    int[] places =
        headed ? named(rows.get(0), named, columns, astray) : inOrder(body, named, columns, astray);
    return lay(body, named, places, columns.size(), plants, astray);
  }

  /** Where the columns of the block go, by their names. */
  private static int[] named(
      List<String> head, boolean plantsFirst, List<Trait> columns, List<String> astray) {
    int[] places = head.stream().mapToInt(cell -> column(cell, columns)).toArray();
    for (int at = plantsFirst ? 1 : 0; at < places.length; at++) {
      if (places[at] == NOWHERE) {
        astray.add("No trait on this sheet is called “%s”.".formatted(head.get(at)));
      }
    }
    return places;
  }

  /** Where they go without names: to the traits from the first on. */
  private static int[] inOrder(
      List<List<String>> body, boolean plantsFirst, List<Trait> columns, List<String> astray) {
    int shift = plantsFirst ? 1 : 0;
    int widest = body.stream().mapToInt(List::size).max().orElse(0);
    if (widest - shift > columns.size()) {
      astray.add(
          "%d columns were pasted, the sheet has %d.".formatted(widest - shift, columns.size()));
    }
    return IntStream.range(0, widest)
        .map(at -> at - shift < columns.size() ? at - shift : NOWHERE)
        .toArray();
  }

  private static PastedBlock lay(
      List<List<String>> body,
      boolean plantsFirst,
      int[] places,
      int columns,
      List<Standing> plants,
      List<String> astray) {
    String[][] boxes = new String[plants.size()][columns];
    Arrays.stream(boxes).forEach(row -> Arrays.fill(row, ""));
    int placed = 0;
    for (int at = 0; at < body.size(); at++) {
      List<String> row = body.get(at);
      int plant = plantsFirst ? plant(row.get(0), plants) : at < plants.size() ? at : NOWHERE;
      if (plant == NOWHERE) {
        astray.add("No plant here for “%s”.".formatted(String.join(" ", row)));
      }
      for (int cell = plantsFirst ? 1 : 0; cell < Math.min(row.size(), places.length); cell++) {
        if (plant != NOWHERE && places[cell] != NOWHERE && !row.get(cell).isEmpty()) {
          boxes[plant][places[cell]] = row.get(cell);
          placed++;
        }
      }
    }
    List<Line> lines =
        IntStream.range(0, boxes.length)
            .mapToObj(at -> new Line(plants.get(at).plantId(), List.of(boxes[at]), false, ""))
            .toList();
    return new PastedBlock(lines, placed, astray);
  }

  /** Tabs part cells, or semicolons where there is no tab: a comma may be a decimal comma. */
  private static List<String> cells(String line) {
    return Arrays.stream(line.split(line.contains("\t") ? "\t" : ";", -1))
        .map(String::strip)
        .toList();
  }

  private static int column(String name, List<Trait> columns) {
    String bare = name.replaceFirst(",.*$", "");
    return IntStream.range(0, columns.size())
        .filter(
            at ->
                columns.get(at).code().equalsIgnoreCase(bare)
                    || columns.get(at).name().equalsIgnoreCase(bare)
                    || columns.get(at).name().equalsIgnoreCase(name))
        .findFirst()
        .orElse(NOWHERE);
  }

  private static boolean labelled(String cell, List<Standing> plants) {
    return plants.stream().anyMatch(plant -> plant.label().equalsIgnoreCase(cell));
  }

  private static int plant(String name, List<Standing> plants) {
    return IntStream.range(0, plants.size())
        .filter(
            at ->
                plants.get(at).label().equalsIgnoreCase(name)
                    || String.valueOf(plants.get(at).number()).equals(name))
        .findFirst()
        .orElse(NOWHERE);
  }
}
