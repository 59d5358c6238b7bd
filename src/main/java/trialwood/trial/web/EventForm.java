package trialwood.trial.web;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import trialwood.crop.Trait;
import trialwood.record.CodeKey;
import trialwood.trial.NewSiteEvent;
import trialwood.trial.SiteEvent;
import trialwood.web.Entry;
import trialwood.web.Form;

/**
 * An event at a site as it is typed.
 *
 * @param traits ids of the traits that are taken out
 * @param plots labels with blanks between them; empty for all plots of the site
 */
record EventForm(
    @Nullable UUID formKey,
    @Nullable String event,
    @Nullable String on,
    @Nullable String kind,
    @Nullable String note,
    @Nullable List<String> traits,
    @Nullable String voidFrom,
    @Nullable String voidUntil,
    @Nullable String plots,
    @Nullable String by)
    implements Form {

  static EventForm fresh(LocalDate today) {
    return new EventForm(
        UUID.randomUUID(), "", today.toString(), "", "", List.of(), "", "", "", null);
  }

  NewSiteEvent read(
      TrialBook.SiteRow site,
      List<TrialBook.PlotRow> standing,
      List<Trait> known,
      LocalDate today) {
    Entry entry = new Entry();
    LocalDate day = entry.day("on", on, today);
    SiteEvent.Kind what =
        Arrays.stream(SiteEvent.Kind.values())
            .filter(one -> one.name().equals(kind))
            .findFirst()
            .orElse(null);
    if (what == null) {
      entry.wrong("kind", "Choose what it was.");
    }
    Set<UUID> out =
        known.stream()
            .filter(trait -> traits != null && traits.contains(String.valueOf(trait.id())))
            .map(Trait::id)
            .collect(Collectors.toSet());
    boolean from = voidFrom != null && !voidFrom.isBlank();
    boolean until = voidUntil != null && !voidUntil.isBlank();
    NewSiteEvent reported =
        new NewSiteEvent(
            entry.words("event", event, "Give the event a code, for example HAIL-CH-25."),
            site.siteId(),
            site.trialId(),
            day,
            what == null ? SiteEvent.Kind.OTHER : what,
            entry.words("note", note, "Say what happened."),
            from ? entry.day("voidFrom", voidFrom, today) : null,
            until ? entry.day("voidUntil", voidUntil, today) : null,
            out,
            plotIds(entry, standing),
            entry.person("by", by));
    entry.orRefuse();
    return reported;
  }

  private Set<UUID> plotIds(Entry entry, List<TrialBook.PlotRow> standing) {
    Map<String, TrialBook.PlotRow> byLabel =
        standing.stream()
            .collect(Collectors.toMap(plot -> CodeKey.of(plot.label()), Function.identity()));
    Set<UUID> ids = new HashSet<>();
    List<String> unknown = new ArrayList<>();
    for (String label : (plots == null ? "" : plots).strip().split("[\\s,;]+")) {
      TrialBook.PlotRow plot = byLabel.get(CodeKey.of(label));
      if (plot != null) {
        ids.add(plot.unitId());
      } else if (!label.isEmpty()) {
        unknown.add(label);
      }
    }
    if (!unknown.isEmpty()) {
      entry.wrong(
          "plots", "No plot of this site is called %s.".formatted(String.join(", ", unknown)));
    }
    return ids;
  }
}
