package trialwood.house.web;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import trialwood.house.House;
import trialwood.house.Houses;
import trialwood.record.Check;
import trialwood.record.CodeKey;
import trialwood.web.EditForm;
import trialwood.web.Entry;

/** What is said of a house. */
record HouseForm(
    @Nullable UUID formKey,
    @Nullable Integer version,
    @Nullable String name,
    @Nullable Boolean propagates,
    @Nullable String note)
    implements EditForm {

  static HouseForm of(House house) {
    return new HouseForm(
        UUID.randomUUID(), house.version(), house.name(), house.propagates(), house.note());
  }

  @Override
  public Map<String, String> words() {
    Map<String, String> words = new LinkedHashMap<>();
    words.put("Cuttings stand in it", Boolean.TRUE.equals(propagates) ? "yes" : "no");
    words.put("Note", Objects.requireNonNullElse(note, ""));
    return words;
  }

  void add(Houses houses) {
    String typed = Objects.requireNonNullElse(name, "").strip();
    Check.that()
        .holds(
            houses.findByNameKey(CodeKey.of(typed)).isEmpty(),
            "name",
            "There is a house of this name already.")
        .holds(
            !typed.equalsIgnoreCase("new"), "name", "Give it a name that says which house it is.")
        .orRefuse();
    houses.save(new House(typed, Boolean.TRUE.equals(propagates), Entry.wordsIfAny(note)));
  }

  void change(House house) {
    sees(house.version());
    house.describe(Boolean.TRUE.equals(propagates), Entry.wordsIfAny(note));
  }
}
