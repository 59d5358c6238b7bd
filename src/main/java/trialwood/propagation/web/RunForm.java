package trialwood.propagation.web;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import trialwood.lineage.Accession;
import trialwood.propagation.Environment;
import trialwood.propagation.NewRun;
import trialwood.propagation.Sticking;
import trialwood.propagation.StickingRun;
import trialwood.propagation.Treatment;
import trialwood.web.Entry;
import trialwood.web.Form;
import trialwood.web.Questions;

/** A sticking run as it is typed; the treatment once, for all its batches. */
record RunForm(
    @Nullable UUID formKey,
    @Nullable String run,
    @Nullable String from,
    @Nullable String to,
    @Nullable String check,
    @Nullable String crew,
    @Nullable String bench,
    @Nullable String cutting,
    @Nullable String lengthMm,
    @Nullable String wounding,
    @Nullable String hormone,
    @Nullable String form,
    @Nullable String ppm,
    @Nullable String dipS,
    @Nullable String solutionMadeOn,
    @Nullable String medium,
    @Nullable String bottomHeatC,
    @Nullable String airC,
    @Nullable String mistOnS,
    @Nullable String mistEveryMin,
    @Nullable String mist,
    @Nullable String shadePercent,
    @Nullable String humidityPercent,
    @Nullable String note,
    @Nullable String asked,
    @Nullable String checked)
    implements Form {

  static RunForm fresh(LocalDate today) {
    String day = today.toString();
    return new RunForm(
        UUID.randomUUID(),
        null,
        day,
        day,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null);
  }

  /** Sets the run up, once what is unusual about it has been answered. */
  StickingRun setUp(Sticking sticking, LocalDate today, Optional<Accession> named) {
    NewRun said = read(today, named);
    Questions questions = new Questions(asked, checked);
    questions.ask(said.unusual());
    return sticking.run(said, questions.orAsk());
  }

  /**
   * @param check the accession behind the check's code, if there is one
   */
  NewRun read(LocalDate today, Optional<Accession> check) {
    Entry entry = new Entry();
    String code = entry.words("run", run, "Give the run a code, for example R22.");
    LocalDate first = entry.day("from", from, today);
    LocalDate last = entry.day("to", to, today);
    if (check.isEmpty()) {
      entry.wrong("check", "Name the bench check that stands in the run by its code.");
    }
    Integer strength = Ppm.read(entry, ppm);
    LocalDate mixed = entry.dayIfAny("solutionMadeOn", solutionMadeOn, today);
    Treatment treatment = entry.guarded(() -> treatment(strength, mixed), Treatment.NONE);
    Integer length = entry.countIfAny("lengthMm", lengthMm);
    Integer dip = entry.countIfAny("dipS", dipS);
    BigDecimal heat = entry.decimalIfAny("bottomHeatC", bottomHeatC);
    Environment house = house(entry);
    entry.orRefuse();
    Accession standard = check.orElseThrow();
    return new NewRun(
        code,
        standard.cropId(),
        first,
        last,
        Objects.requireNonNull(standard.id()),
        Entry.wordsIfAny(crew),
        Entry.wordsIfAny(bench),
        Entry.wordsIfAny(mist),
        house,
        heat,
        Entry.wordsIfAny(cutting),
        length,
        treatment,
        dip,
        Entry.wordsIfAny(medium),
        Entry.wordsIfAny(note));
  }

  private Treatment treatment(@Nullable Integer strength, @Nullable LocalDate mixed) {
    return new Treatment(
        Entry.wordsIfAny(wounding),
        Entry.wordsIfAny(hormone),
        Entry.wordsIfAny(form),
        strength,
        mixed);
  }

  private Environment house(Entry entry) {
    Integer burst = entry.countIfAny("mistOnS", mistOnS);
    BigDecimal every = entry.decimalIfAny("mistEveryMin", mistEveryMin);
    BigDecimal air = entry.decimalIfAny("airC", airC);
    Integer shade = entry.countIfAny("shadePercent", shadePercent);
    Integer humidity = entry.countIfAny("humidityPercent", humidityPercent);
    return entry.guarded(
        () -> new Environment(burst, every, air, shade, humidity), Environment.UNKNOWN);
  }
}
