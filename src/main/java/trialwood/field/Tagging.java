package trialwood.field;

import java.time.Clock;
import java.time.LocalDate;
import java.util.Objects;
import java.util.UUID;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import trialwood.candidate.Candidate;
import trialwood.candidate.CandidateEvent;
import trialwood.candidate.CandidateEvents;
import trialwood.candidate.Candidates;
import trialwood.lineage.Accession;
import trialwood.lineage.AccessionKind;
import trialwood.lineage.Accessions;
import trialwood.lineage.Parentage;
import trialwood.record.Check;
import trialwood.record.CodeKey;
import trialwood.record.Recorded;
import trialwood.record.Recorder;
import trialwood.unit.Identity;
import trialwood.unit.Tie;
import trialwood.unit.Unit;
import trialwood.unit.UnitKind;
import trialwood.unit.Units;
import trialwood.web.Measures;

/** Hangs a tag: the position becomes a unit, the plant an accession, the accession a candidate. */
@Service
public class Tagging {

  private final FieldTags tags;
  private final Units units;
  private final Accessions accessions;
  private final Candidates candidates;
  private final CandidateEvents events;
  private final Identity identity;
  private final Recorder recorder;
  private final Clock clock;

  Tagging(
      FieldTags tags,
      Units units,
      Accessions accessions,
      Candidates candidates,
      CandidateEvents events,
      Identity identity,
      Recorder recorder,
      Clock clock) {
    this.tags = tags;
    this.units = units;
    this.accessions = accessions;
    this.candidates = candidates;
    this.events = events;
    this.identity = identity;
    this.recorder = recorder;
    this.clock = clock;
  }

  /**
   * @return the candidate's accession
   * @throws trialwood.record.Refused when the code or the position is taken, or the day impossible
   */
  @Transactional
  public UUID hang(Population population, NewTag tag) {
    String position = population.label(tag.row(), tag.position());
    refuseWhatIsTaken(population, tag, position);
    Recorded recorded = recorder.by(tag.personId());
    UUID unit = position(population, position);
    UUID accession = accession(population, tag);
    tags.save(
        new FieldTag(
            Objects.requireNonNull(population.id()),
            tag.row(),
            tag.position(),
            position,
            unit,
            accession,
            tag.on(),
            tag.seen(),
            recorded));
    // the plant stood there since planting, so looks before the tag are looks at it
    identity.say(
        new Tie(
            unit, accession, population.plantedOn(), null, "field tag", null, tag.on(), recorded));
    candidates.save(new Candidate(accession));
    if (tag.outstanding()) {
      events.save(
          new CandidateEvent(
              accession, tag.on(), CandidateEvent.Kind.MARKED_OUTSTANDING, tag.seen(), recorded));
    }
    return accession;
  }

  private void refuseWhatIsTaken(Population population, NewTag tag, String position) {
    Check.that()
        .holds(
            !tags.existsByLivePosition(position),
            "position",
            "A tag already hangs at %s.".formatted(position))
        .holds(
            !accessions.existsByCodeKey(CodeKey.of(tag.code())),
            "accession",
            "The code %s is taken.".formatted(tag.code().strip()))
        .holds(
            !tag.on().isBefore(population.plantedOn()),
            "on",
            "The population was planted later, on %s."
                .formatted(Measures.day(population.plantedOn())))
        .holds(!tag.on().isAfter(LocalDate.now(clock)), "on", "A tag cannot hang from tomorrow on.")
        .orRefuse();
  }

  private UUID position(Population population, String label) {
    Unit unit =
        units
            .labelled(label)
            .orElseGet(() -> units.save(new Unit(UnitKind.POSITION, label, population.siteId())));
    return Objects.requireNonNull(unit.id());
  }

  private UUID accession(Population population, NewTag tag) {
    Parentage parentage =
        tag.seedParentId() == null
            ? Parentage.unknown()
            : Parentage.openPollinated(tag.seedParentId());
    Accession accession =
        new Accession(population.cropId(), tag.code(), AccessionKind.CANDIDATE, parentage, null);
    accession.describe(tag.talkName(), tag.description());
    return Objects.requireNonNull(accessions.save(accession).id());
  }
}
