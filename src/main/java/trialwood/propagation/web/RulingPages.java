package trialwood.propagation.web;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.RequestMapping;
import trialwood.propagation.TraySheet;
import trialwood.web.Entry;

/** Declaring a tray void, or letting it count again. */
@Controller
@RequestMapping("/bench/trays/{label}/ruling")
class RulingPages extends TrayFormPages<RulingPages.RulingForm> {

  RulingPages(TrayDesk desk) {
    super(desk, "ruling");
  }

  record RulingForm(
      @Nullable UUID formKey,
      @Nullable String on,
      @Nullable String counts,
      @Nullable String reason,
      @Nullable String by)
      implements TrayForm {

    @Override
    public @Nullable UUID record(TrayDesk desk, UUID tray) {
      Entry entry = new Entry();
      LocalDate day = entry.day("on", on, desk.today());
      String ruling = entry.words("counts", counts, "Say whether the tray counts.");
      String because = entry.words("reason", reason, "Say why.");
      UUID person = entry.person("by", by);
      entry.orRefuse();
      desk.records().rule(tray, day, "yes".equals(ruling), because, person);
      return null;
    }
  }

  @Override
  RulingForm fresh(TraySheet sheet, LocalDate today, Optional<UUID> corrects, @Nullable String by) {
    return new RulingForm(UUID.randomUUID(), today.toString(), null, "", by);
  }

  @ModelAttribute("votes")
  Map<String, String> votes() {
    Map<String, String> words = new LinkedHashMap<>();
    words.put("no", "is void");
    words.put("yes", "counts");
    return words;
  }
}
