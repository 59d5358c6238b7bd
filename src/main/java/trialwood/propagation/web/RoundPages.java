package trialwood.propagation.web;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import trialwood.propagation.Round;
import trialwood.propagation.RoundFilter;
import trialwood.propagation.RoundTray;
import trialwood.propagation.Rounds;
import trialwood.web.ForStaff;

/** The list of the round: which trays wait, in the order in which they stand. */
@Controller
class RoundPages {

  private final Rounds rounds;
  private final Clock clock;

  RoundPages(Rounds rounds, Clock clock) {
    this.rounds = rounds;
    this.clock = clock;
  }

  /** A part of the benches to go along, with its address. */
  record Part(String words, String href, boolean chosen) {}

  /** A tray on the list, with where its line leads. */
  record Line(RoundTray tray, String href) {}

  @GetMapping("/bench/round")
  @ForStaff
  String round(
      @RequestParam Optional<String> bench,
      @RequestParam Optional<String> run,
      @RequestParam Optional<String> block,
      Model model) {
    RoundFilter filter = new RoundFilter(bench.orElse(null), run.orElse(null), block.orElse(null));
    LocalDate today = LocalDate.now(clock);
    Round all = rounds.on(today);
    Round round = all.along(filter);
    model.addAttribute("today", today);
    model.addAttribute("round", round);
    model.addAttribute("lines", round.listed().stream().map(it -> line(it, filter)).toList());
    model.addAttribute("states", RoundTray.State.values());
    round.first().ifPresent(first -> model.addAttribute("first", line(first, filter)));
    model.addAttribute(
        "parts",
        Stream.of(
                parts(
                    "bench",
                    all,
                    filter.bench(),
                    RoundTray::bench,
                    it -> new RoundFilter(it, null, null)),
                parts(
                    "run",
                    all.along(new RoundFilter(filter.bench(), null, null)),
                    filter.run(),
                    RoundTray::run,
                    it -> new RoundFilter(filter.bench(), it, null)),
                parts(
                    "block",
                    all.along(new RoundFilter(filter.bench(), filter.run(), null)),
                    filter.block(),
                    RoundTray::block,
                    it -> new RoundFilter(filter.bench(), filter.run(), it)))
            .filter(row -> row.size() > 2)
            .toList());
    return "bench/round";
  }

  private static Line line(RoundTray tray, RoundFilter filter) {
    return new Line(
        tray,
        tray.isWaiting()
            ? RoundPlace.form(tray, filter)
            : tray.doubtId() != null ? "/doubts/" + tray.doubtId() : "/bench/trays/" + tray.tray());
  }

  private static List<Part> parts(
      String what,
      Round round,
      @Nullable String chosen,
      Function<RoundTray, @Nullable String> name,
      Function<@Nullable String, RoundFilter> filter) {
    return Stream.concat(
            Stream.of(
                new Part(
                    what.equals("bench") ? "all benches" : "all %ss".formatted(what),
                    RoundPlace.list(filter.apply(null)),
                    chosen == null)),
            round.listed().stream()
                .map(name)
                .filter(Objects::nonNull)
                .map(Objects::requireNonNull)
                .distinct()
                .sorted()
                .map(
                    it ->
                        new Part(
                            what.equals("block") ? "block " + it : it,
                            RoundPlace.list(filter.apply(it)),
                            it.equals(chosen))))
        .toList();
  }
}
