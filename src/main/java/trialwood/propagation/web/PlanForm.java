package trialwood.propagation.web;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.concurrent.ThreadLocalRandom;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import trialwood.lineage.Accession;
import trialwood.lineage.Accessions;
import trialwood.propagation.NewPlan;
import trialwood.site.Bench;
import trialwood.site.Benches;
import trialwood.web.Entry;
import trialwood.web.Form;

/**
 * A bench plan as it is asked for.
 *
 * @param entries codes, one a line
 * @param benches codes of the benches, in their order along the gradient
 */
record PlanForm(
    @Nullable UUID formKey,
    @Nullable String entries,
    @Nullable String blocks,
    @Nullable List<String> benches,
    @Nullable String firstPlace,
    @Nullable String seed)
    implements Form {

  private static final int LARGEST_SEED = 1_000_000;
  private static final int MOST_ENTRIES = 200;

  static PlanForm fresh(List<String> entries) {
    return new PlanForm(
        UUID.randomUUID(),
        String.join("\n", entries),
        "3",
        List.of(),
        "1",
        String.valueOf(ThreadLocalRandom.current().nextInt(1, LARGEST_SEED)));
  }

  NewPlan read(Accessions accessions, Benches known) {
    Entry entry = new Entry();
    List<Accession> named = named(entry, accessions);
    List<Bench> picked = new ArrayList<>();
    for (String code : new LinkedHashSet<>(Objects.requireNonNullElse(benches, List.of()))) {
      known
          .findByCode(code)
          .ifPresentOrElse(
              picked::add, () -> entry.wrong("benches", "There is no bench “%s”.".formatted(code)));
    }
    if (picked.isEmpty()) {
      entry.wrong("benches", "Pick the bench, or one for each block.");
    }
    int number = entry.count("blocks", blocks);
    int first = entry.count("firstPlace", firstPlace);
    int drawnFrom = entry.count("seed", seed);
    entry.orRefuse();
    return new NewPlan(named, number, picked, first, drawnFrom);
  }

  private List<Accession> named(Entry entry, Accessions accessions) {
    List<String> typed =
        Objects.requireNonNullElse(entries, "")
            .lines()
            .map(String::strip)
            .filter(line -> !line.isEmpty())
            .toList();
    if (typed.isEmpty() || typed.size() > MOST_ENTRIES) {
      entry.wrong("entries", "Name what stands in each block, a code a line, at most 200.");
      return List.of();
    }
    List<Accession> named = new ArrayList<>();
    List<String> unknown = new ArrayList<>();
    typed.forEach(
        code -> accessions.named(code).ifPresentOrElse(named::add, () -> unknown.add(code)));
    if (!unknown.isEmpty()) {
      entry.wrong(
          "entries",
          "There is no accession %s."
              .formatted(
                  unknown.stream().map("“%s”"::formatted).collect(Collectors.joining(", "))));
    }
    return named;
  }
}
