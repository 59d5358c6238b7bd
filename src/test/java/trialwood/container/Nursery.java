package trialwood.container;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.stream.IntStream;
import trialwood.crop.Better;
import trialwood.crop.ContainerClass;
import trialwood.crop.ContainerClasses;
import trialwood.crop.Crop;
import trialwood.crop.Crops;
import trialwood.crop.LookDays;
import trialwood.crop.Trait;
import trialwood.crop.TraitKind;
import trialwood.crop.Traits;
import trialwood.lineage.Accession;
import trialwood.lineage.AccessionKind;
import trialwood.lineage.Accessions;
import trialwood.lineage.CheckRole;
import trialwood.lineage.CropCheck;
import trialwood.lineage.CropChecks;
import trialwood.lineage.Parentage;
import trialwood.observation.Observation;
import trialwood.observation.Observations;
import trialwood.observation.Reading;
import trialwood.record.Recorder;
import trialwood.unit.Identity;
import trialwood.unit.Tie;

/** A crop, two classes of pots, a few accessions: the ground that these tests stand on. */
public class Nursery {

  public static final LocalDate POTTED = LocalDate.of(2022, 7, 20);
  public static final LocalDate AUTUMN = LocalDate.of(2022, 10, 12);

  private final Crops crops;
  private final ContainerClasses classes;
  private final Accessions accessions;
  private final CropChecks checks;
  private final Traits traits;
  private final Observations observations;
  private final Identity identity;
  private final Recorder recorder;
  private final Potting potting;
  private final Numbering numbering;

  Nursery(
      Crops crops,
      ContainerClasses classes,
      Accessions accessions,
      CropChecks checks,
      Traits traits,
      Observations observations,
      Identity identity,
      Recorder recorder,
      Potting potting,
      Numbering numbering) {
    this.crops = crops;
    this.classes = classes;
    this.accessions = accessions;
    this.checks = checks;
    this.traits = traits;
    this.observations = observations;
    this.identity = identity;
    this.recorder = recorder;
    this.potting = potting;
    this.numbering = numbering;
  }

  public UUID crop() {
    return id(
        crops.findAll().stream()
            .findFirst()
            .orElseGet(
                () ->
                    crops.save(
                        new Crop(
                            "ALTHEA",
                            "Hibiscus syriacus",
                            "althea",
                            true,
                            18,
                            28,
                            LookDays.of("7 14 21 28"),
                            85,
                            null)))
            .id());
  }

  public UUID containerClass(String code, String highestLitres) {
    return id(
        classes
            .findByCode(code)
            .orElseGet(
                () ->
                    classes.save(
                        new ContainerClass(code, null, new BigDecimal(highestLitres), null)))
            .id());
  }

  public UUID smallPots() {
    return containerClass("#1", "4.113");
  }

  public UUID largePots() {
    return containerClass("#3", "12.159");
  }

  public UUID accession(String code) {
    return id(
        accessions
            .named(code)
            .orElseGet(
                () ->
                    accessions.save(
                        new Accession(
                            crop(), code, AccessionKind.CANDIDATE, Parentage.unknown(), null)))
            .id());
  }

  public UUID check(String code, CheckRole role) {
    UUID check = accession(code);
    checks.save(new CropCheck(crop(), check, role));
    return check;
  }

  public Trait height() {
    return traits
        .findByCropIdAndCode(crop(), "HEIGHT")
        .orElseGet(() -> traits.save(number("HEIGHT", "Plant height", "cm", "600")));
  }

  public Trait flowers() {
    return traits
        .findByCropIdAndCode(crop(), "FLOWERS")
        .orElseGet(() -> traits.save(number("FLOWERS", "Open flowers", null, "300")));
  }

  private Trait number(String code, String name, String unit, String highest) {
    return new Trait(
        crop(),
        code,
        name,
        TraitKind.MEASUREMENT,
        unit,
        BigDecimal.ZERO,
        new BigDecimal(highest),
        0,
        Better.HIGHER,
        null,
        null,
        Set.of("plant"),
        null,
        false);
  }

  /** Pots in the small class. */
  public Pots pots(int number) {
    return new Pots(smallPots(), new BigDecimal("2.8"), POTTED, number, "bed 1", null);
  }

  public UUID lot(String label, String accession, int potted) {
    return potting.pot(new NewLot(label, accession(accession), pots(potted), List.of(), null));
  }

  public List<UUID> numbered(UUID lot, String label, int plants) {
    return numbering.number(
        lot,
        IntStream.rangeClosed(1, plants)
            .mapToObj(n -> new NewPlant("%s-%02d".formatted(label, n), n))
            .toList(),
        POTTED,
        null);
  }

  public void measured(List<UUID> plants, Trait trait, LocalDate on, int... values) {
    for (int i = 0; i < values.length; i++) {
      observations.saveAndFlush(
          new Observation(
              plants.get(i),
              trait,
              on,
              Reading.of(BigDecimal.valueOf(values[i])),
              null,
              recorder.by(null)));
    }
  }

  /** Somebody found out that the unit was another accession's from the day of potting on. */
  public void swapped(UUID unit, String accession) {
    identity.say(
        new Tie(
            unit,
            accession(accession),
            POTTED,
            null,
            "labels were exchanged",
            "the flower",
            AUTUMN,
            recorder.by(null)));
  }

  private static UUID id(UUID id) {
    return Objects.requireNonNull(id);
  }
}
