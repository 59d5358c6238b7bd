package trialwood.analysis.reference;

import java.util.Map;
import java.util.function.Function;
import trialwood.analysis.distinct.ColourDifference;
import trialwood.analysis.distinct.Lab;
import trialwood.analysis.distinct.Xyz;

/** Colour: 11. */
final class Colours implements Family {

  @Override
  public Map<String, Function<Row, Object>> methods() {
    return Map.of(
        "srgb_to_xyz", Colours::xyz,
        "srgb_to_lab", Colours::lab,
        "srgb_to_lch", Colours::lab,
        "colour_difference", Colours::difference);
  }

  private static Object xyz(Row row) {
    Xyz colour = Xyz.ofSrgb(row.input("hex"));
    return switch (row.quantity()) {
      case "X" -> colour.x();
      case "Y" -> colour.y();
      case "Z" -> colour.z();
      default -> throw new UnknownRow(row);
    };
  }

  private static Object lab(Row row) {
    Lab colour = Lab.ofSrgb(row.input("hex"));
    return switch (row.quantity()) {
      case "L" -> colour.lightness();
      case "a" -> colour.a();
      case "b" -> colour.b();
      case "C" -> colour.chroma();
      case "h" -> colour.hue().value().orElse(Double.NaN);
      default -> throw new UnknownRow(row);
    };
  }

  private static Object difference(Row row) {
    Lab one = Lab.ofSrgb(row.input("hex1"));
    Lab other = Lab.ofSrgb(row.input("hex2"));
    return switch (row.quantity()) {
      case "delta_e76" -> ColourDifference.e76(one, other);
      case "delta_e2000" -> ColourDifference.e2000(one, other);
      default -> throw new UnknownRow(row);
    };
  }
}
