package trialwood.trial.web;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import trialwood.lineage.Accession;
import trialwood.lineage.Accessions;
import trialwood.site.Site;
import trialwood.site.Sites;
import trialwood.trial.EntryRole;
import trialwood.trial.NewTrial;
import trialwood.trial.TrialPlanting;
import trialwood.web.Entry;
import trialwood.web.Form;
import trialwood.web.Typed;

/**
 * A trial as it is planned on the page; everything stays text until it has been read.
 *
 * @param candidates codes, and {@code market}, {@code susceptible}: codes of the checks, with
 *     blanks between them
 * @param sites one a line: code, then the day of planting
 */
record PlanForm(
    @Nullable UUID formKey,
    @Nullable String crop,
    @Nullable String trial,
    @Nullable String name,
    @Nullable String objective,
    @Nullable String candidates,
    @Nullable String market,
    @Nullable String susceptible,
    @Nullable String sites,
    @Nullable String blocks,
    @Nullable String plantsPerPlot,
    @Nullable String spacingMm,
    @Nullable String seed)
    implements Form {

  static PlanForm fresh(LocalDate today) {
    return new PlanForm(
        UUID.randomUUID(),
        "",
        "",
        "",
        "",
        "",
        "",
        "",
        "",
        "4",
        "2",
        "1500",
        today.toString().replace("-", ""));
  }

  /** Plans the trial, enters and plants it. */
  void plant(
      TrialPlanting planting,
      Accessions accessions,
      Sites known,
      @Nullable UUID personId,
      LocalDate today) {
    Entry entry = new Entry();
    NewTrial plan =
        new NewTrial(
            entry.id("crop", crop, "Choose the crop."),
            entry.words("trial", trial, "Give the trial a code, for example T3."),
            entry.words("name", name, "Give the trial a name."),
            Entry.wordsIfAny(objective),
            (long) entry.count("seed", seed),
            entry.count("blocks", blocks),
            entry.count("plantsPerPlot", plantsPerPlot),
            entry.countIfAny("spacingMm", spacingMm));
    Map<UUID, EntryRole> entries = new LinkedHashMap<>();
    read(entry, accessions, "candidates", candidates, EntryRole.CANDIDATE, entries);
    read(entry, accessions, "market", market, EntryRole.MARKET, entries);
    read(entry, accessions, "susceptible", susceptible, EntryRole.SUSCEPTIBLE, entries);
    if (!entries.containsValue(EntryRole.MARKET)) {
      entry.wrong("market", "Name a market check, or nothing can be compared.");
    }
    Map<UUID, LocalDate> places = places(entry, known, today);
    entry.orRefuse();
    UUID planned = planting.plan(plan);
    entries.forEach((accession, role) -> planting.enter(planned, accession, role));
    places.forEach((site, day) -> planting.standAt(planned, site, day));
    planting.layOut(planned, personId);
  }

  private static void read(
      Entry entry,
      Accessions accessions,
      String field,
      @Nullable String codes,
      EntryRole role,
      Map<UUID, EntryRole> entries) {
    List<String> unknown = new ArrayList<>();
    for (String code : words(codes)) {
      Optional<Accession> accession = accessions.named(code);
      if (accession.isEmpty()) {
        unknown.add(code);
      } else if (entries.putIfAbsent(accession.get().id(), role) != null) {
        entry.wrong(field, "%s is named twice.".formatted(code));
      }
    }
    if (!unknown.isEmpty()) {
      entry.wrong(field, "Nobody knows %s.".formatted(String.join(", ", unknown)));
    }
  }

  private Map<UUID, LocalDate> places(Entry entry, Sites known, LocalDate today) {
    Map<UUID, LocalDate> places = new LinkedHashMap<>();
    for (String line : (sites == null ? "" : sites).lines().filter(l -> !l.isBlank()).toList()) {
      String[] parts = line.strip().split("[\\s,]+", 2);
      Optional<Site> site = known.findByCode(parts[0]);
      Optional<LocalDate> day = parts.length < 2 ? Optional.empty() : Typed.date(parts[1], today);
      if (site.isEmpty()) {
        entry.wrong("sites", "There is no site %s.".formatted(parts[0]));
      } else if (day.isEmpty()) {
        entry.wrong("sites", "%s: type the day of planting, like 8 Apr 2027.".formatted(parts[0]));
      } else if (places.put(site.get().id(), day.get()) != null) {
        entry.wrong("sites", "%s is named twice.".formatted(parts[0]));
      }
    }
    if (places.isEmpty()) {
      entry.wrong("sites", "Say where it is planted, one site a line.");
    }
    return places;
  }

  private static List<String> words(@Nullable String text) {
    return text == null || text.isBlank() ? List.of() : List.of(text.strip().split("[\\s,;]+"));
  }
}
