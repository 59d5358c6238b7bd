package trialwood.ground;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.Sort;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import trialwood.candidate.Stage;
import trialwood.crop.Crop;
import trialwood.crop.Crops;
import trialwood.crop.Trait;
import trialwood.crop.Traits;
import trialwood.evidence.Metric;
import trialwood.gate.Catalogue;
import trialwood.gate.Criterion;
import trialwood.gate.GatePolicies;
import trialwood.gate.GatePolicy;
import trialwood.web.ForStaff;

/** The policy in force for a crop: what its six gates ask, in plain words. */
@Controller
class PolicyPage {

  private final Crops crops;
  private final Traits traits;
  private final GatePolicies policies;
  private final Catalogue catalogue;
  private final Clock clock;

  PolicyPage(Crops crops, Traits traits, GatePolicies policies, Catalogue catalogue, Clock clock) {
    this.crops = crops;
    this.traits = traits;
    this.policies = policies;
    this.catalogue = catalogue;
    this.clock = clock;
  }

  /** One gate. */
  record Gate(Stage stage, List<PolicyLine> lines) {}

  /**
   * @param crop code of the crop; the first one where none or an unknown one is named
   */
  @GetMapping("/ground/gates")
  @ForStaff
  String gates(@RequestParam(required = false) @Nullable String crop, Model page) {
    List<Crop> all = crops.findAll(Sort.by("code"));
    Crop chosen =
        all.stream()
            .filter(one -> one.code().equals(crop))
            .findFirst()
            .orElse(all.isEmpty() ? null : all.get(0));
    page.addAttribute("crops", all);
    page.addAttribute("crop", chosen);
    if (chosen != null && chosen.id() != null) {
      policies.inForce(List.of(chosen.id()), LocalDate.now(clock)).stream()
          .findFirst()
          .ifPresent(policy -> told(policy, chosen.id(), page));
    }
    return "ground/gates";
  }

  private void told(GatePolicy policy, UUID crop, Model page) {
    Map<@Nullable UUID, Trait> known =
        traits.findByCropIdOrderByCode(crop).stream()
            .collect(Collectors.toMap(Trait::id, Function.identity()));
    List<Gate> gates = new ArrayList<>();
    for (Stage stage : Stage.values()) {
      if (stage != Stage.RELEASED) {
        gates.add(new Gate(stage, policy.at(stage).stream().map(c -> line(c, known)).toList()));
      }
    }
    page.addAttribute("policy", policy);
    page.addAttribute("gates", gates);
  }

  private PolicyLine line(Criterion criterion, Map<@Nullable UUID, Trait> traits) {
    if (criterion.ask() == null) {
      return PolicyLine.of(criterion, null, null);
    }
    Metric metric = catalogue.metric(criterion.ask().metricKey()).orElse(null);
    return PolicyLine.of(criterion, metric, traits.get(criterion.ask().traitId()));
  }
}
