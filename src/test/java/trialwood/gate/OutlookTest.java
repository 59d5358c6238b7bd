package trialwood.gate;

import static org.assertj.core.api.Assertions.assertThat;
import static trialwood.gate.Bench.rooted;

import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import trialwood.analysis.rate.FurtherTrays.Chance;
import trialwood.analysis.rate.RateDifference;
import trialwood.analysis.rate.TrayCount;
import trialwood.analysis.rate.TrayPosterior;
import trialwood.evidence.Evidence;
import trialwood.evidence.InPercent;

class OutlookTest {

  private static final boolean PLAIN = false;

  @Test
  void trays_that_disagree_are_settled_by_further_trays_the_more_the_likelier() {
    Finding open = Policy.rootedSure().judge(rooted(23, 22, 9), PLAIN);
    Outlook outlook = Outlook.of(open, PLAIN).orElseThrow();

    assertThat(Outlook.isOpen(open)).isTrue();
    assertThat(outlook.cuttings()).isEqualTo(24);
    assertThat(outlook.chances().get(3).settled())
        .isGreaterThan(outlook.chances().get(0).settled());
    assertThat(outlook.chances())
        .allSatisfy(chance -> assertThat(chance.simulationError()).isBetween(0.0001, 0.012));
  }

  @Test
  void what_is_settled_or_not_on_record_asks_for_no_trays() {
    assertThat(Outlook.of(Policy.rootedSure().judge(rooted(22, 21, 23), PLAIN), PLAIN)).isEmpty();
    assertThat(Outlook.isOpen(Policy.rootedSure().judge(Evidence.noRecord("None."), PLAIN)))
        .isFalse();
  }

  @Test
  void one_good_tray_lacks_evidence_until_two_more_are_stuck() {
    Finding open = Policy.rootedSure().judge(rooted(23), PLAIN);
    Outlook outlook = Outlook.of(open, PLAIN).orElseThrow();

    assertThat(outlook.chances().get(0).settled()).isZero();
    assertThat(outlook.chances().get(1).settled()).isPositive();
  }

  @Test
  void against_the_check_its_trays_stay_as_they_were_counted() {
    TrayPosterior check = TrayPosterior.of(List.of(new TrayCount(22, 24), new TrayCount(23, 24)));
    RateDifference difference =
        RateDifference.between(
            TrayPosterior.of(List.of(new TrayCount(16, 24), new TrayCount(20, 24))), check);
    Evidence now =
        Evidence.of(-18.75, "% points", Bench.JULY, "Difference.")
            .from(48, 2, "36 of 48")
            .believing(new InPercent(difference), 0.95)
            .build();
    Outlook outlook = Outlook.of(Policy.notFarBehind().judge(now, PLAIN), PLAIN).orElseThrow();

    assertThat(outlook.chances()).isSortedAccordingTo(Comparator.comparing(Chance::trays));
    assertThat(outlook.chances().get(0).settled()).isBetween(0.05, 0.6);
  }
}
