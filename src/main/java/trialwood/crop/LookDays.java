package trialwood.crop;

import jakarta.persistence.AttributeConverter;
import jakarta.persistence.Converter;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import trialwood.record.Check;

/**
 * The days after sticking on which trays are looked at, ascending.
 *
 * @param days days after sticking, at least one, each above zero
 */
public record LookDays(List<Integer> days) {

  public LookDays {
    days = days.stream().sorted().distinct().toList();
    Check.that()
        .holds(
            !days.isEmpty() && days.get(0) > 0,
            "look_days",
            "Name the days after sticking on which to look, for example 7 10 14.")
        .orRefuse();
  }

  /** Reads "7 10 14". */
  public static LookDays of(String typed) {
    try {
      return new LookDays(
          Arrays.stream(typed.strip().split("[\\s,;]+")).map(Integer::valueOf).toList());
    } catch (NumberFormatException notANumber) {
      throw new trialwood.record.Refused(
          "look_days", "Look days are whole numbers, for example 7 10 14.");
    }
  }

  public int last() {
    return days.get(days.size() - 1);
  }

  @Override
  public String toString() {
    return days.stream().map(String::valueOf).collect(Collectors.joining(" "));
  }

  /** Keeps look days in one text column. */
  @Converter(autoApply = true)
  static class AsText implements AttributeConverter<LookDays, String> {

    @Override
    public String convertToDatabaseColumn(LookDays days) {
      return days.toString();
    }

    @Override
    public LookDays convertToEntityAttribute(String text) {
      return LookDays.of(text);
    }
  }
}
