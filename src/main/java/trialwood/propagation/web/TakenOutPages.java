package trialwood.propagation.web;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.RequestMapping;
import trialwood.propagation.TakenOut;
import trialwood.propagation.TraySheet;
import trialwood.web.Entry;

/** Cuttings that leave the tray before its final count. */
@Controller
@RequestMapping("/bench/trays/{label}/taken-out")
class TakenOutPages extends TrayFormPages<TakenOutPages.TakenOutForm> {

  TakenOutPages(TrayDesk desk) {
    super(desk, "bench/taken-out");
  }

  record TakenOutForm(
      @Nullable UUID formKey,
      @Nullable String on,
      @Nullable String number,
      @Nullable String rooted,
      TakenOut.@Nullable Fate fate,
      @Nullable String note,
      @Nullable String by)
      implements TrayForm {

    @Override
    public void record(TrayDesk desk, UUID tray) {
      Entry entry = new Entry();
      LocalDate day = entry.day("on", on, desk.today());
      int out = entry.count("number", number);
      boolean roots = "yes".equals(entry.words("rooted", rooted, "Say whether they had roots."));
      if (fate == null) {
        entry.wrong("fate", "Say what became of them.");
      }
      UUID person = entry.person("by", by);
      entry.orRefuse();
      desk.records()
          .takenOut(
              tray, day, out, roots, Objects.requireNonNull(fate), Entry.wordsIfAny(note), person);
    }
  }

  @Override
  TakenOutForm fresh(TraySheet sheet, LocalDate today, Optional<UUID> corrects) {
    return new TakenOutForm(UUID.randomUUID(), today.toString(), "1", null, null, "", null);
  }

  @ModelAttribute("rootedOrNot")
  Map<String, String> rootedOrNot() {
    Map<String, String> words = new LinkedHashMap<>();
    words.put("yes", "rooted");
    words.put("no", "no roots");
    return words;
  }

  @ModelAttribute("fates")
  Map<String, String> fates() {
    Map<String, String> words = new LinkedHashMap<>();
    for (TakenOut.Fate fate : TakenOut.Fate.values()) {
      words.put(fate.name(), fate.word());
    }
    return words;
  }
}
