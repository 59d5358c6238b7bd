package trialwood.label.web;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import trialwood.label.LabelFormat;
import trialwood.label.Layout;
import trialwood.web.EditForm;
import trialwood.web.Entry;

/** How labels lie on their paper, in millimetres. */
record FormatForm(
    @Nullable UUID formKey,
    @Nullable Integer version,
    @Nullable String name,
    @Nullable String paperWidth,
    @Nullable String paperHeight,
    @Nullable String across,
    @Nullable String down,
    @Nullable String left,
    @Nullable String top,
    @Nullable String width,
    @Nullable String height,
    @Nullable String stepRight,
    @Nullable String stepDown)
    implements EditForm {

  static FormatForm fresh() {
    return new FormatForm(
        UUID.randomUUID(), null, "", "210", "297", "", "", "", "", "", "", "", "");
  }

  static FormatForm of(LabelFormat format) {
    Layout layout = format.layout();
    return new FormatForm(
        UUID.randomUUID(),
        format.version(),
        format.name(),
        Boxes.number(layout.paperWidth()),
        Boxes.number(layout.paperHeight()),
        String.valueOf(layout.across()),
        String.valueOf(layout.down()),
        Boxes.number(layout.left()),
        Boxes.number(layout.top()),
        Boxes.number(layout.width()),
        Boxes.number(layout.height()),
        Boxes.number(layout.stepRight()),
        Boxes.number(layout.stepDown()));
  }

  @Override
  public Map<String, String> words() {
    Map<String, String> words = new LinkedHashMap<>();
    words.put("Paper, width", Boxes.text(paperWidth));
    words.put("Paper, height", Boxes.text(paperHeight));
    words.put("Labels side by side", Boxes.text(across));
    words.put("Labels below each other", Boxes.text(down));
    words.put("Margin left", Boxes.text(left));
    words.put("Margin above", Boxes.text(top));
    words.put("Label, width", Boxes.text(width));
    words.put("Label, height", Boxes.text(height));
    words.put("Step to the right", Boxes.text(stepRight));
    words.put("Step down", Boxes.text(stepDown));
    return words;
  }

  /**
   * @throws trialwood.record.Refused when something cannot be read, or the labels cannot lie so
   */
  Layout layout() {
    Entry entry = new Entry();
    BigDecimal wide = Boxes.decimal(entry, "width", width);
    BigDecimal high = Boxes.decimal(entry, "height", height);
    BigDecimal paperWide = Boxes.decimal(entry, "paperWidth", paperWidth);
    BigDecimal paperHigh = Boxes.decimal(entry, "paperHeight", paperHeight);
    int columns = entry.count("across", across);
    int rows = entry.count("down", down);
    BigDecimal fromLeft = Boxes.decimal(entry, "left", left);
    BigDecimal fromTop = Boxes.decimal(entry, "top", top);
    BigDecimal right = step(entry, "stepRight", stepRight, wide, columns);
    BigDecimal below = step(entry, "stepDown", stepDown, high, rows);
    entry.orRefuse();
    return new Layout(
        paperWide, paperHigh, columns, rows, fromLeft, fromTop, wide, high, right, below);
  }

  /** Where there is one label only, no step is asked for. */
  private static BigDecimal step(
      Entry entry, String field, @Nullable String text, BigDecimal size, int labels) {
    return labels == 1 && Boxes.text(text).isEmpty() ? size : Boxes.decimal(entry, field, text);
  }

  void change(LabelFormat format) {
    sees(format.version());
    format.lay(layout());
  }

  LabelFormat made() {
    return new LabelFormat(Boxes.text(name), layout());
  }
}
