package trialwood.container;

import java.math.BigDecimal;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import trialwood.analysis.means.PlantSample;
import trialwood.crop.Trait;
import trialwood.crop.Traits;
import trialwood.observation.Observation;
import trialwood.observation.Observations;
import trialwood.observation.Reading;
import trialwood.record.Checked;
import trialwood.record.Problem;
import trialwood.record.Recorded;
import trialwood.record.Recorder;
import trialwood.record.Refused;
import trialwood.unit.Doubt;
import trialwood.unit.Doubts;
import trialwood.web.Measures;

/** Keeps a measuring sheet, plant by plant: a line with something wrong holds up no other. */
@Service
public class Measuring {

  private final Observations observations;
  private final Traits traits;
  private final Doubts doubts;
  private final Recorder recorder;
  private final JdbcClient jdbc;
  private final Clock clock;

  Measuring(
      Observations observations,
      Traits traits,
      Doubts doubts,
      Recorder recorder,
      JdbcClient jdbc,
      Clock clock) {
    this.observations = observations;
    this.traits = traits;
    this.doubts = doubts;
    this.recorder = recorder;
    this.jdbc = jdbc;
    this.clock = clock;
  }

  /**
   * Plants of one clone whose lengths spread more than this are looked at again. Common practice,
   * no source.
   */
  private static final double WIDE = 0.30;

  private static final int ENOUGH = 5;

  /** What is unusual about a sheet as a whole: one clone's plants differ by far in a length. */
  public List<Problem> questions(List<PlantValues> lines) {
    Map<UUID, Trait> known = traitsOf(lines);
    List<Problem> asked = new ArrayList<>();
    for (Trait trait : known.values()) {
      List<Double> values =
          lines.stream()
              .map(line -> line.readings().get(trait.id()))
              .filter(reading -> reading != null && reading.number() != null)
              .map(reading -> reading.number().doubleValue())
              .toList();
      if ("cm".equals(trait.unit()) && values.size() >= ENOUGH) {
        PlantSample.of(values)
            .cv()
            .value()
            .filter(cv -> cv > WIDE)
            .map(cv -> spread(trait, cv, values.size()))
            .ifPresent(asked::add);
      }
    }
    return asked;
  }

  private static Problem spread(Trait trait, double cv, int n) {
    return new Problem(
        "lines",
        "%s: the standard deviation is %.0f %% of the mean of %d plants. Is a line in inches, or another clone's?"
            .formatted(trait.name(), 100 * cv, n));
  }

  /** Keeps what was asked about a lot's sheet as a whole, with the answer; once. */
  @Transactional
  public void answered(UUID lotId, LocalDate on, Checked checked, @Nullable UUID personId) {
    if (doubts.existsByUnitIdAndOnDateAndQuestion(lotId, on, checked.asked())) {
      return;
    }
    Recorded recorded = recorder.by(personId);
    Doubt doubt = new Doubt(lotId, on, checked.asked(), recorded);
    doubt.answer(checked.checked(), recorded);
    doubts.save(doubt);
  }

  /** A trait of a plant. */
  private record Place(UUID plant, UUID trait) {}

  private record Before(
      UUID unitId, UUID traitId, LocalDate onDate, @Nullable BigDecimal numberValue) {}

  /**
   * Keeps the lines that can be kept. A value that can hardly follow the plant's last one is kept
   * only with a word on what was found; question and answer are kept beside it. A value that is on
   * record already is kept once, so that a sheet whose answer was lost on the way can be sent
   * again.
   *
   * @return what is wrong with the other lines, by plant; each problem's field is a trait's code
   * @throws Refused when the day lies ahead
   */
  @Transactional
  public Map<UUID, List<Problem>> keep(
      List<PlantValues> lines, LocalDate on, @Nullable UUID personId) {
    if (on.isAfter(LocalDate.now(clock))) {
      throw new Refused(
          "on", "%s lies ahead; records are of what was seen.".formatted(Measures.day(on)));
    }
    Recorded recorded = recorder.by(personId);
    Map<UUID, Trait> known = traitsOf(lines);
    Map<Place, Earlier> before = before(lines, on);
    Map<UUID, List<Problem>> wrong = new LinkedHashMap<>();
    List<Observation> kept = new ArrayList<>();
    List<Doubt> asked = new ArrayList<>();
    for (PlantValues line : lines) {
      Line read = new Line(line, on, recorded);
      line.readings()
          .forEach(
              (trait, reading) ->
                  read.take(
                      known.get(trait),
                      reading,
                      Optional.ofNullable(before.get(new Place(line.plantId(), trait)))));
      if (read.problems.isEmpty()) {
        kept.addAll(read.observations);
        asked.addAll(read.doubts);
      } else {
        wrong.put(line.plantId(), read.problems);
      }
    }
    observations.saveAllAndFlush(kept);
    doubts.saveAll(asked);
    return wrong;
  }

  /**
   * Puts a value in the place of an earlier one of the same plant, trait and day; both stay
   * readable.
   *
   * @throws Refused without a reason, when the value is impossible, or when the earlier one was
   *     replaced before
   */
  @Transactional
  public void correct(
      Observation earlier, Reading reading, String reason, @Nullable UUID personId) {
    UUID id = Objects.requireNonNull(earlier.id());
    if (observations.existsBySupersedesId(id)) {
      throw new Refused("supersedeReason", "This value was replaced before.");
    }
    Trait trait = traits.findById(earlier.traitId()).orElseThrow();
    observations.saveAndFlush(
        new Observation(
                earlier.unitId(),
                trait,
                earlier.onDate(),
                reading,
                earlier.note(),
                recorder.by(personId))
            .insteadOf(id, reason));
  }

  private Map<UUID, Trait> traitsOf(List<PlantValues> lines) {
    List<UUID> ids =
        lines.stream().flatMap(line -> line.readings().keySet().stream()).distinct().toList();
    return traits.findAllById(ids).stream().collect(Collectors.toMap(Trait::id, trait -> trait));
  }

  private Map<Place, Earlier> before(List<PlantValues> lines, LocalDate on) {
    Map<Place, Earlier> found = new HashMap<>();
    if (lines.isEmpty()) {
      return found;
    }
    jdbc.sql(
            """
            select v.unit_id, v.trait_id, v.on_date, v.number_value
            from (select o.unit_id, o.trait_id, o.on_date, o.number_value,
                         row_number() over (partition by o.unit_id, o.trait_id
                                            order by o.on_date desc, o.recorded_at desc) as place
                  from observation o
                  where o.unit_id in (:plants) and o.on_date <= :day
                    and not exists (select 1 from observation later
                                    where later.supersedes_id = o.id)) v
            where v.place = 1
            """)
        .param("plants", lines.stream().map(PlantValues::plantId).toList())
        .param("day", on)
        .query(Before.class)
        .list()
        .forEach(
            it ->
                found.put(
                    new Place(it.unitId(), it.traitId()),
                    new Earlier(it.onDate(), it.numberValue())));
    return found;
  }

  /** One line while it is read. */
  private static final class Line {

    private final PlantValues line;
    private final LocalDate on;
    private final Recorded recorded;
    private final List<Problem> problems = new ArrayList<>();
    private final List<Observation> observations = new ArrayList<>();
    private final List<Doubt> doubts = new ArrayList<>();

    Line(PlantValues line, LocalDate on, Recorded recorded) {
      this.line = line;
      this.on = on;
      this.recorded = recorded;
    }

    void take(Trait trait, Reading reading, Optional<Earlier> earlier) {
      if (earlier.filter(it -> it.says(reading, on)).isPresent()) {
        return;
      }
      if (earlier.filter(it -> it.on().equals(on)).isPresent()) {
        wrong(
            trait,
            "%s of this plant is on record for %s.".formatted(trait.name(), Measures.day(on)));
        return;
      }
      Optional<String> question =
          reading.number() == null
              ? Optional.empty()
              : earlier.flatMap(it -> it.question(trait, reading.number(), on));
      if (question.isPresent() && line.checked() == null) {
        wrong(trait, question.get());
        return;
      }
      question.ifPresent(words -> doubts.add(answered(words)));
      try {
        String note = question.isPresent() ? line.checked() : null;
        observations.add(new Observation(line.plantId(), trait, on, reading, note, recorded));
      } catch (Refused refused) {
        refused.problems().forEach(problem -> wrong(trait, problem.sentence()));
      }
    }

    private Doubt answered(String question) {
      Doubt doubt = new Doubt(line.plantId(), on, question, recorded);
      doubt.answer(line.checked() == null ? "" : line.checked(), recorded);
      return doubt;
    }

    private void wrong(Trait trait, String sentence) {
      problems.add(new Problem(trait.code(), sentence));
    }
  }
}
