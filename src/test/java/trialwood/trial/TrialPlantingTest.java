package trialwood.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import trialwood.crop.Better;
import trialwood.observation.NoneBecause;
import trialwood.observation.Reading;
import trialwood.record.Refused;

@TrialGround.OnTrialGround
class TrialPlantingTest {

  private static final LocalDate PLANTED = LocalDate.of(2024, 4, 8);

  private @Autowired TrialGround ground;
  private @Autowired TrialPlanting planting;
  private @Autowired TrialRecords records;
  private @Autowired JdbcClient jdbc;
  private UUID trial;

  @BeforeEach
  void plan() {
    ground.site("HB", "Home Block");
    ground.site("CH", "Corrow Hill");
    ground.trait("BLOOM", "weeks", Better.HIGHER, 1);
    trial = ground.trial("T1", 4, "CK-1", "A18-01", "C18-03");
    planting.standAt(trial, ground.id("HB"), PLANTED);
    planting.standAt(trial, ground.id("CH"), PLANTED.plusDays(11));
  }

  @Test
  void a_laid_out_trial_has_every_plot_tied_to_its_entry_from_planting_on() {
    planting.layOut(trial, null);

    assertThat(
            jdbc.sql(
                    """
                    select count(*) from plot p
                    join unit u on u.id = p.unit_id and u.kind = 'PLOT'
                    join trial_site ts on ts.id = p.trial_site_id and ts.site_id = u.site_id
                    join trial_entry e on e.id = p.entry_id
                    join holding h on h.unit_id = p.unit_id and h.accession_id = e.accession_id
                      and h.from_date = ts.planted_on
                    """)
                .query(Integer.class)
                .single())
        .isEqualTo(2 * 4 * 3);
    assertThat(ground.plot("T1-HB-01")).isNotNull();
    assertThat(ground.plot("t1-ch-12")).isNotNull();
  }

  @Test
  void a_trial_is_laid_out_only_once() {
    planting.layOut(trial, null);
    refused("The label T1-HB-01 is used already.", () -> planting.layOut(trial, null));
  }

  @Test
  void a_given_plot_may_stand_anywhere_but_on_another() {
    give("P1", "CK-1", 1, 1, 1);
    refused(
        "Plot P2: row 1, column 1 is taken by another plot.", () -> give("P2", "A18-01", 1, 1, 1));
    refused("The label p1 is used already.", () -> give("p1", "A18-01", 1, 1, 2));
    refused(
        "Plot P2: block 1 of the site has that entry already.", () -> give("P2", "CK-1", 1, 1, 2));
    give("P2", "CK-1", 2, 2, 1);
  }

  @Test
  void a_plot_of_a_stranger_is_refused() {
    ground.accession("F18-01");
    refused(
        "Plot P1: that accession is not an entry of trial T1.",
        () -> give("P1", "F18-01", 1, 1, 1));
    UUID elsewhere = ground.site("SG", "Saltgrass Flat");
    refused(
        "Plot P1: trial T1 does not stand at that site.",
        () ->
            planting.plant(
                trial,
                List.of(new GivenPlot("P1", elsewhere, ground.id("CK-1"), 1, 1, 1, 2)),
                null));
  }

  @Test
  void codes_entries_and_sites_are_there_once() {
    refused("The code T1 is taken.", () -> ground.trial("T1", 4, "CK-1"));
    refused(
        "CK-1 is in trial T1 already.",
        () -> planting.enter(trial, ground.id("CK-1"), EntryRole.SUSCEPTIBLE));
    refused(
        "The trial stands at this site already.",
        () -> planting.standAt(trial, ground.id("HB"), PLANTED));
  }

  @ParameterizedTest
  @CsvSource({"0, 2, A trial has 1 to 50 blocks at a site.", "4, 201, A plot has 1 to 200 plants."})
  void an_impossible_plan_is_refused(int blocks, int plants, String sentence) {
    refused(
        sentence,
        () ->
            planting.plan(
                new NewTrial(ground.crop(), "T9", "Set 9", null, 1L, blocks, plants, null)));
  }

  @Test
  void what_cannot_have_been_seen_is_refused() {
    give("P1", "CK-1", 1, 1, 1);
    refused(
        "The plot was planted later, on 2024-04-08.",
        () -> ground.see("P1", "BLOOM", "2024-04-07", 8));
    refused(
        "BLOOM runs from 0 to 600 weeks; this says 601.",
        () -> ground.see("P1", "BLOOM", "2024-10-14", 601));
    ground.see("P1", "BLOOM", "2024-10-14", Reading.none(NoneBecause.DEAD));
    refused(
        "BLOOM is on record for that day already.",
        () -> ground.see("P1", "BLOOM", "2024-10-14", 8));
  }

  @Test
  void an_event_says_what_it_takes_out_and_from_when_until_when() {
    give("P1", "CK-1", 1, 1, 1);
    refused("Say from when until when the traits are taken out.", () -> hail("CH", null, Set.of()));
    refused(
        "A plot that is named stands elsewhere.",
        () -> hail("CH", LocalDate.of(2025, 12, 31), Set.of(ground.plot("P1"))));
    refused(
        "The last day taken out lies before the first.",
        () -> hail("CH", LocalDate.of(2025, 7, 1), Set.of()));
    hail("CH", LocalDate.of(2025, 12, 31), Set.of());
    refused("The code HAIL-25 is taken.", () -> hail("CH", LocalDate.of(2025, 12, 31), Set.of()));
  }

  private void hail(String site, LocalDate until, Set<UUID> plots) {
    LocalDate day = LocalDate.of(2025, 7, 19);
    records.report(
        new NewSiteEvent(
            "HAIL-25",
            ground.id(site),
            trial,
            day,
            SiteEvent.Kind.HAIL,
            "all plots stripped",
            until == null ? null : day,
            until,
            Set.of(ground.id("BLOOM")),
            plots,
            null));
  }

  private void give(String label, String entry, int block, int row, int column) {
    planting.plant(
        trial,
        List.of(new GivenPlot(label, ground.id("HB"), ground.id(entry), block, row, column, 2)),
        null);
  }

  private static void refused(String sentence, ThrowingCallable work) {
    assertThatExceptionOfType(Refused.class).isThrownBy(work).withMessage(sentence);
  }
}
