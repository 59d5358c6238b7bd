package trialwood.ground;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import trialwood.record.Refused;
import trialwood.site.Bench;
import trialwood.site.Benches;
import trialwood.web.EditForm;
import trialwood.web.Entry;

/** What is said of a bench; its code is typed once, when it is new. */
record BenchForm(
    @Nullable UUID formKey,
    @Nullable Integer version,
    @Nullable String bench,
    @Nullable String name,
    @Nullable String house,
    @Nullable String places,
    @Nullable String note)
    implements EditForm {

  static BenchForm fresh() {
    return new BenchForm(UUID.randomUUID(), null, null, null, null, null, null);
  }

  static BenchForm of(Bench bench) {
    return new BenchForm(
        UUID.randomUUID(),
        bench.version(),
        bench.code(),
        bench.name(),
        bench.house(),
        String.valueOf(bench.places()),
        bench.note());
  }

  @Override
  public Map<String, String> words() {
    Map<String, String> words = new LinkedHashMap<>();
    words.put("Name", Boxes.text(name));
    words.put("House", Boxes.text(house));
    words.put("Tray places", Boxes.text(places));
    words.put("Note", Boxes.text(note));
    return words;
  }

  /**
   * @throws Refused when something cannot be read or cannot be, or the code is taken
   */
  void add(Benches benches) {
    Entry entry = new Entry();
    String code = entry.words("bench", bench, "Give the bench a short code, for example M1.");
    int room = entry.count("places", places);
    if (benches.findByCode(code).isPresent()) {
      entry.wrong("bench", "There is a bench %s already.".formatted(code));
    }
    entry.orRefuse();
    benches.save(
        new Bench(code, Boxes.text(name), Entry.wordsIfAny(house), room, Entry.wordsIfAny(note)));
  }

  /**
   * @throws Refused when something cannot be read or cannot be, or somebody else was faster
   */
  void change(Bench stored) {
    sees(stored.version());
    Entry entry = new Entry();
    int room = entry.count("places", places);
    entry.orRefuse();
    stored.describe(Boxes.text(name), Entry.wordsIfAny(house), room, Entry.wordsIfAny(note));
  }
}
