package trialwood.label.web;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import trialwood.label.Printer;
import trialwood.web.EditForm;
import trialwood.web.Entry;

/** What is done to each page of a printer. */
record PrinterForm(
    @Nullable UUID formKey,
    @Nullable Integer version,
    @Nullable String name,
    @Nullable String moveRight,
    @Nullable String moveDown,
    @Nullable String scalePercent)
    implements EditForm {

  static PrinterForm fresh() {
    return new PrinterForm(UUID.randomUUID(), null, "", "0", "0", "100");
  }

  static PrinterForm of(Printer printer) {
    return new PrinterForm(
        UUID.randomUUID(),
        printer.version(),
        printer.name(),
        Boxes.number(printer.moveRight()),
        Boxes.number(printer.moveDown()),
        Boxes.number(printer.scalePercent()));
  }

  @Override
  public Map<String, String> words() {
    Map<String, String> words = new LinkedHashMap<>();
    words.put("Moved to the right, mm", Boxes.text(moveRight));
    words.put("Moved down, mm", Boxes.text(moveDown));
    words.put("Scale, %", Boxes.text(scalePercent));
    return words;
  }

  private record Setting(BigDecimal right, BigDecimal down, BigDecimal scale) {}

  private Setting setting() {
    Entry entry = new Entry();
    Setting setting =
        new Setting(
            Boxes.decimal(entry, "moveRight", moveRight),
            Boxes.decimal(entry, "moveDown", moveDown),
            Boxes.decimal(entry, "scalePercent", scalePercent));
    entry.orRefuse();
    return setting;
  }

  /**
   * @throws trialwood.record.Refused when something cannot be read or cannot be, or somebody else
   *     was faster
   */
  void change(Printer printer) {
    sees(printer.version());
    Setting setting = setting();
    printer.set(setting.right(), setting.down(), setting.scale());
  }

  Printer made() {
    Setting setting = setting();
    return new Printer(Boxes.text(name), setting.right(), setting.down(), setting.scale());
  }
}
