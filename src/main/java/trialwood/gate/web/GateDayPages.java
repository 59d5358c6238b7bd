package trialwood.gate.web;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import trialwood.candidate.Stage;
import trialwood.crop.Crops;
import trialwood.gate.GatePolicy;
import trialwood.gate.Review;
import trialwood.gate.Reviews;
import trialwood.gate.Waiting;
import trialwood.gate.Waiting.AtGate;
import trialwood.lineage.Accession;
import trialwood.lineage.Accessions;
import trialwood.web.ForStaff;
import trialwood.web.Place;
import trialwood.web.Typed;

/** The list of gates, and gate day: all candidates at one gate on one page. */
@Controller
@ForStaff
class GateDayPages {

  private final Gates gates;
  private final Waiting waiting;
  private final Accessions accessions;
  private final Crops crops;
  private final Reviews reviews;
  private final Clock clock;

  GateDayPages(
      Gates gates,
      Waiting waiting,
      Accessions accessions,
      Crops crops,
      Reviews reviews,
      Clock clock) {
    this.gates = gates;
    this.waiting = waiting;
    this.accessions = accessions;
    this.crops = crops;
    this.reviews = reviews;
    this.clock = clock;
  }

  @GetMapping("/gates")
  @Place(key = "gates", label = "Gates", order = 70)
  String list(Model page) {
    page.addAttribute("gates", gates.all());
    return "gate/list";
  }

  @GetMapping("/gates/{gate}")
  String day(
      @PathVariable String gate,
      @RequestParam(required = false) @Nullable String asOf,
      Model page) {
    Stage stage = Gates.named(gate);
    LocalDate day = day(asOf);
    List<AtGate> here = waiting.at(stage, day);
    page.addAttribute("gate", stage);
    page.addAttribute("heading", Gates.title(stage));
    page.addAttribute("asOf", day);
    page.addAttribute("number", here.size());
    page.addAttribute("sheets", sheets(stage, here, day));
    return "gate/day";
  }

  /** A date that cannot be read, or has not come, is today. */
  private LocalDate day(@Nullable String typed) {
    LocalDate today = LocalDate.now(clock);
    return Typed.date(typed == null ? "" : typed, today)
        .filter(day -> !day.isAfter(today))
        .orElse(today);
  }

  private List<GateSheet> sheets(Stage gate, List<AtGate> here, LocalDate day) {
    Map<UUID, AtGate> byId =
        here.stream().collect(Collectors.toMap(AtGate::accessionId, Function.identity()));
    Map<UUID, Review> reviewed = reviews.of(gate, byId.keySet(), day);
    Set<UUID> known = reviewed.keySet();
    Map<UUID, List<GateSheet.Waiting>> byCrop = new LinkedHashMap<>();
    for (Accession accession : accessions.findAllById(known)) {
      byCrop
          .computeIfAbsent(accession.cropId(), crop -> new ArrayList<>())
          .add(
              new GateSheet.Waiting(
                  accession, byId.get(accession.id()), reviewed.get(accession.id())));
    }
    return crops.findAllById(byCrop.keySet()).stream()
        .map(
            crop -> {
              List<GateSheet.Waiting> waiting = byCrop.getOrDefault(crop.id(), List.of());
              GatePolicy policy = waiting.get(0).review().policy();
              return GateSheet.of(crop.commonName(), policy, waiting);
            })
        .toList();
  }
}
