package trialwood.container.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import trialwood.container.web.PlantBook.Standing;
import trialwood.container.web.SheetForm.Line;
import trialwood.crop.Better;
import trialwood.crop.Trait;
import trialwood.crop.TraitKind;

class PastedBlockTest {

  private static final List<Trait> COLUMNS =
      List.of(trait("HEIGHT", "Plant height"), trait("WIDTH1", "Widest width"));
  private static final List<Standing> PLANTS =
      IntStream.rangeClosed(1, 3)
          .mapToObj(n -> new Standing(UUID.randomUUID(), "L1-%02d".formatted(n), n))
          .toList();

  private static Trait trait(String code, String name) {
    return new Trait(
        UUID.randomUUID(),
        code,
        name,
        TraitKind.MEASUREMENT,
        "cm",
        BigDecimal.ONE,
        new BigDecimal("600"),
        0,
        Better.NEITHER,
        null,
        null,
        Set.of("plant"),
        null,
        false);
  }

  private static PastedBlock pasted(String text) {
    return PastedBlock.of(text, COLUMNS, PLANTS);
  }

  private static List<List<String>> cells(PastedBlock block) {
    return block.lines().stream().map(Line::cells).toList();
  }

  @Test
  void a_bare_block_begins_at_the_first_plant_and_the_first_trait() {
    PastedBlock block = pasted("61,5\t40\n58\tdead\n");

    assertThat(cells(block))
        .containsExactly(List.of("61,5", "40"), List.of("58", "dead"), List.of("", ""));
    assertThat(block.placed()).isEqualTo(4);
    assertThat(block.astray()).isEmpty();
  }

  @Test
  void names_say_where_lines_and_columns_go() {
    PastedBlock block = pasted("plant\tWidest width, cm\tHEIGHT\n3\t40\t61\nL1-01\t42\t63\n");

    assertThat(cells(block))
        .containsExactly(List.of("63", "42"), List.of("", ""), List.of("61", "40"));
    assertThat(block.astray()).isEmpty();
  }

  @Test
  void labels_name_plants_without_a_heading() {
    assertThat(cells(pasted("L1-02\t61\t40")).get(1)).containsExactly("61", "40");
  }

  @Test
  void semicolons_part_cells_where_there_is_no_tab() {
    assertThat(cells(pasted("61,5;40")).get(0)).containsExactly("61,5", "40");
  }

  @Test
  void what_has_no_place_is_told() {
    assertThat(pasted("plant\tHEIGHT\tGIRTH\n1\t61\t9\n7\t61\t9").astray())
        .containsExactly(
            "No trait on this sheet is called “GIRTH”.", "No plant here for “7 61 9”.");
    assertThat(pasted("1\t2\t3").astray())
        .containsExactly("3 columns were pasted, the sheet has 2.");
    assertThat(pasted("1\n2\n3\n4").astray()).containsExactly("No plant here for “4”.");
  }

  @Test
  void nothing_pasted_is_an_empty_sheet() {
    assertThat(pasted("\n \n").placed()).isZero();
  }
}
