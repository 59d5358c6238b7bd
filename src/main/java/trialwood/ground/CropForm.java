package trialwood.ground;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import trialwood.crop.Crop;
import trialwood.crop.LookDays;
import trialwood.web.EditForm;
import trialwood.web.Entry;

/** What is said of a crop, and what its stages expect. */
record CropForm(
    @Nullable UUID formKey,
    @Nullable Integer version,
    @Nullable String botanicalName,
    @Nullable String commonName,
    @Nullable Boolean woody,
    @Nullable String rootingFromDays,
    @Nullable String rootingToDays,
    @Nullable String lookDays,
    @Nullable String checkFloorPercent,
    @Nullable String denominationClass,
    @Nullable String rootKillCelsius)
    implements EditForm {

  static CropForm of(Crop crop) {
    return new CropForm(
        UUID.randomUUID(),
        crop.version(),
        crop.botanicalName(),
        crop.commonName(),
        crop.isWoody(),
        String.valueOf(crop.rootingFromDays()),
        String.valueOf(crop.rootingToDays()),
        crop.lookDays().toString(),
        String.valueOf(crop.checkFloorPercent()),
        crop.denominationClass(),
        crop.rootKillCelsius() == null ? "" : crop.rootKillCelsius().toPlainString());
  }

  @Override
  public Map<String, String> words() {
    Map<String, String> words = new LinkedHashMap<>();
    words.put("Common name", Boxes.text(commonName));
    words.put("Botanical name", Boxes.text(botanicalName));
    words.put("Tree, shrub or vine", Boxes.yesNo(woody));
    words.put("Roots expected from day", Boxes.text(rootingFromDays));
    words.put("Roots expected until day", Boxes.text(rootingToDays));
    words.put("Looks on the days after sticking", Boxes.text(lookDays));
    words.put("Floor of the bench check, % rooted", Boxes.text(checkFloorPercent));
    words.put("Denomination class", Boxes.text(denominationClass));
    words.put("Roots die below, °C", Boxes.text(rootKillCelsius));
    return words;
  }

  /**
   * @throws trialwood.record.Refused when something cannot be read or cannot be, or somebody else
   *     was faster
   */
  void change(Crop crop) {
    sees(crop.version());
    Entry entry = new Entry();
    int from = entry.count("rootingFromDays", rootingFromDays);
    int to = entry.count("rootingToDays", rootingToDays);
    int floor = entry.count("checkFloorPercent", checkFloorPercent);
    BigDecimal rootKill = entry.decimalIfAny("rootKillCelsius", rootKillCelsius);
    entry.words("lookDays", lookDays, "Name the days on which to look, for example 7 10 14.");
    entry.orRefuse();
    crop.describe(
        Boxes.text(botanicalName),
        Boxes.text(commonName),
        Boolean.TRUE.equals(woody),
        from,
        to,
        LookDays.of(Boxes.text(lookDays)),
        floor,
        Entry.wordsIfAny(denominationClass));
    crop.rootsDieBelow(rootKill);
  }
}
