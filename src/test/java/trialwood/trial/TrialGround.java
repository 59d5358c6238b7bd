package trialwood.trial;

import java.lang.annotation.ElementType;
import java.lang.annotation.Inherited;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Import;
import org.springframework.context.annotation.Scope;
import trialwood.crop.Better;
import trialwood.crop.Crop;
import trialwood.crop.Crops;
import trialwood.crop.LookDays;
import trialwood.crop.Trait;
import trialwood.crop.TraitKind;
import trialwood.crop.Traits;
import trialwood.lineage.Accession;
import trialwood.lineage.AccessionKind;
import trialwood.lineage.Accessions;
import trialwood.lineage.Parentage;
import trialwood.observation.Reading;
import trialwood.site.Site;
import trialwood.site.Sites;
import trialwood.testing.RecordTest;
import trialwood.testing.Statements;
import trialwood.unit.Identity;
import trialwood.unit.Units;
import trialwood.web.Measures;

/** A crop, sites, entries and traits by their codes, to plant trials on. */
@Scope("prototype")
public class TrialGround {

  /** The record and what trials need of it. */
  @Inherited
  @Retention(RetentionPolicy.RUNTIME)
  @Target(ElementType.TYPE)
  @RecordTest
  @Import({
    Identity.class,
    TrialPlanting.class,
    TrialRecords.class,
    SeasonMeans.class,
    TrialEvidence.class,
    TrialLifeLine.class,
    TrialGround.class,
    TrialGround.Slice.class
  })
  @interface OnTrialGround {}

  /** What the slice lacks of the application, and the count of its statements. */
  @TestConfiguration(proxyBeanMethods = false)
  static class Slice {

    @Bean
    static Statements statements() {
      return new Statements();
    }

    @Bean
    Measures measures() {
      return new Measures(ZoneOffset.UTC);
    }
  }

  private final Crops crops;
  private final Traits traits;
  private final Sites sites;
  private final Accessions accessions;
  private final Units units;
  private final TrialPlanting planting;
  private final TrialRecords records;
  private final Map<String, UUID> ids = new HashMap<>();

  TrialGround(
      Crops crops,
      Traits traits,
      Sites sites,
      Accessions accessions,
      Units units,
      TrialPlanting planting,
      TrialRecords records) {
    this.crops = crops;
    this.traits = traits;
    this.sites = sites;
    this.accessions = accessions;
    this.units = units;
    this.planting = planting;
    this.records = records;
  }

  UUID crop() {
    ids.computeIfAbsent(
        "ALTHEA",
        code ->
            crops
                .save(
                    new Crop(
                        code,
                        "Hibiscus syriacus",
                        "althea",
                        true,
                        14,
                        28,
                        LookDays.of("14 28"),
                        85,
                        null))
                .id());
    return ids.get("ALTHEA");
  }

  UUID id(String code) {
    return ids.get(code);
  }

  UUID site(String code, String name) {
    return ids.computeIfAbsent(
        code, c -> sites.save(new Site(c, name, null, null, null, null, null)).id());
  }

  UUID accession(String code) {
    UUID crop = crop();
    return ids.computeIfAbsent(
        code,
        c ->
            accessions
                .save(
                    new Accession(crop, c, AccessionKind.CULTIVAR, Parentage.unknown(), "made up"))
                .id());
  }

  UUID trait(String code, String unit, Better better, int decimals) {
    UUID crop = crop();
    return ids.computeIfAbsent(
        code,
        c ->
            traits
                .save(
                    new Trait(
                        crop,
                        c,
                        c,
                        TraitKind.MEASUREMENT,
                        unit,
                        BigDecimal.ZERO,
                        BigDecimal.valueOf(600),
                        decimals,
                        better,
                        null,
                        null,
                        Set.of("plot"),
                        null,
                        false))
                .id());
  }

  /** A trial of these entries, the first of them the market check. */
  UUID trial(String code, int blocks, String... entries) {
    UUID trial =
        planting.plan(new NewTrial(crop(), code, "Set " + code, null, 7L, blocks, 2, 1500));
    Arrays.stream(entries)
        .forEach(
            entry ->
                planting.enter(
                    trial,
                    accession(entry),
                    entry.equals(entries[0]) ? EntryRole.MARKET : EntryRole.CANDIDATE));
    return trial;
  }

  /** Plants the entries in the order given, one row a block: T1-HB-1-1 is block 1, entry 1. */
  void plantInOrder(UUID trial, String code, String site, int blocks, String... entries) {
    for (int block = 1; block <= blocks; block++) {
      for (int nth = 1; nth <= entries.length; nth++) {
        planting.plant(
            trial,
            List.of(
                new GivenPlot(
                    "%s-%s-%d-%d".formatted(code, site, block, nth),
                    id(site),
                    accession(entries[nth - 1]),
                    block,
                    block,
                    nth,
                    2)),
            null);
      }
    }
  }

  UUID plot(String label) {
    return units.labelled(label).orElseThrow().id();
  }

  void see(String plot, String trait, String on, double value) {
    see(plot, trait, on, Reading.of(BigDecimal.valueOf(value)));
  }

  void see(String plot, String trait, String on, Reading reading) {
    records.observe(
        new PlotReading(plot(plot), id(trait), LocalDate.parse(on), reading, null, null));
  }
}
