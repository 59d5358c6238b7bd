package trialwood.crop;

import jakarta.persistence.AttributeConverter;
import jakarta.persistence.Column;
import jakarta.persistence.Convert;
import jakarta.persistence.Converter;
import jakarta.persistence.Embeddable;
import java.time.LocalDate;
import java.time.MonthDay;
import org.jspecify.annotations.Nullable;

/**
 * The days of the year, both included, in which a trait can be seen. A window may run over the new
 * year.
 */
@Embeddable
public record Window(
    @Column(name = "window_from") @Convert(converter = Window.AsText.class) MonthDay from,
    @Column(name = "window_until") @Convert(converter = Window.AsText.class) MonthDay until) {

  /** Whether the day lies inside the window. */
  public boolean contains(LocalDate day) {
    MonthDay it = MonthDay.from(day);
    return from.isAfter(until)
        ? !it.isBefore(from) || !it.isAfter(until)
        : !it.isBefore(from) && !it.isAfter(until);
  }

  /** Keeps a day of the year as MM-DD. */
  @Converter
  static class AsText implements AttributeConverter<MonthDay, String> {

    @Override
    public @Nullable String convertToDatabaseColumn(@Nullable MonthDay day) {
      return day == null ? null : day.toString().substring(2);
    }

    @Override
    public @Nullable MonthDay convertToEntityAttribute(@Nullable String text) {
      return text == null ? null : MonthDay.parse("--" + text);
    }
  }
}
