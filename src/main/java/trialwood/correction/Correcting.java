package trialwood.correction;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import trialwood.record.Recorded;
import trialwood.record.Recorder;
import trialwood.record.Refused;
import trialwood.unit.Corrections;
import trialwood.unit.Doubt;
import trialwood.unit.Doubts;
import trialwood.unit.NewHolder;
import trialwood.web.Entry;

/** Puts labels right as a form says. */
@Service
class Correcting {

  private final Mistakes mistakes;
  private final Proposals proposals;
  private final Corrections corrections;
  private final Doubts doubts;
  private final Recorder recorder;

  Correcting(
      Mistakes mistakes,
      Proposals proposals,
      Corrections corrections,
      Doubts doubts,
      Recorder recorder) {
    this.mistakes = mistakes;
    this.proposals = proposals;
    this.corrections = corrections;
    this.doubts = doubts;
    this.recorder = recorder;
  }

  /**
   * @throws Refused when what was typed cannot be read
   */
  Proposal propose(CorrectionForm form) {
    return proposals.of(mistakes.read(form));
  }

  /**
   * Says what was proposed of the ticked units, and answers the ticked questions with it.
   *
   * @return the mark of the correction
   * @throws Refused without a reason, or when nothing is ticked
   */
  @Transactional
  UUID correct(CorrectionForm form) {
    Proposal proposal = propose(form);
    Mistake mistake = proposal.mistake();
    Entry entry = new Entry();
    String reason = entry.words("reason", form.reason(), "Say what happened to the labels.");
    UUID person = entry.id("by", form.by(), "Pick who says so.");
    List<NewHolder> holders = proposal.holders(form);
    if (holders.isEmpty()) {
      entry.wrong("units", "Tick what is put right.");
    }
    entry.orRefuse();
    Recorded by = recorder.by(person);
    List<UUID> settled =
        new ArrayList<>(
            proposal.asked().stream().map(Proposal.Asked::id).filter(form::answers).toList());
    proposal.seen().stream()
        .filter(seen -> seen.id().toString().equals(form.seen()))
        .forEach(seen -> settled.add(noticed(seen, by)));
    return corrections.say(
        holders,
        mistake.from(),
        mistake.until().equals(Period.OPEN) ? null : mistake.until(),
        reason,
        Entry.wordsIfAny(form.evidence()),
        settled,
        by);
  }

  /** What showed it first is kept as a question of its day. */
  private UUID noticed(Records.Seen seen, Recorded by) {
    return Objects.requireNonNull(
        doubts.saveAndFlush(Doubt.noticed(seen.unitId(), seen.onDate(), seen.words(), by)).id());
  }

  /**
   * Says again what held before.
   *
   * @return the mark of the sayings that do so
   */
  @Transactional
  UUID takeBack(UUID correction, String reason, @Nullable UUID person) {
    return corrections.takeBack(correction, reason, recorder.by(person));
  }
}
