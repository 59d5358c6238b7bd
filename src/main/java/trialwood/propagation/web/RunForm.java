package trialwood.propagation.web;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import trialwood.lineage.Accession;
import trialwood.propagation.NewRun;
import trialwood.propagation.Treatment;
import trialwood.web.Entry;
import trialwood.web.Form;
import trialwood.web.Typed;

/** A sticking run as it is typed; the treatment once, for all its batches. */
record RunForm(
    @Nullable UUID formKey,
    @Nullable String run,
    @Nullable String from,
    @Nullable String to,
    @Nullable String check,
    @Nullable String crew,
    @Nullable String bench,
    @Nullable String mist,
    @Nullable String bottomHeatC,
    @Nullable String cutting,
    @Nullable String lengthMm,
    @Nullable String wounding,
    @Nullable String hormone,
    @Nullable String form,
    @Nullable String ppm,
    @Nullable Boolean strong,
    @Nullable String dipS,
    @Nullable String medium,
    @Nullable String note)
    implements Form {

  /**
   * Softwood is rarely dipped in more than this (common practice, no source): ask, do not refuse.
   */
  private static final int USUAL_PPM = 10_000;

  static RunForm fresh(LocalDate today) {
    String day = today.toString();
    return new RunForm(
        UUID.randomUUID(),
        "",
        day,
        day,
        "",
        "",
        "",
        "",
        "",
        "",
        "",
        "",
        "",
        "",
        "",
        null,
        "",
        "",
        "");
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
    BigDecimal heat = heat(entry);
    Integer length = entry.countIfAny("lengthMm", lengthMm);
    Integer strength = strength(entry);
    Integer dip = entry.countIfAny("dipS", dipS);
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
        heat,
        Entry.wordsIfAny(cutting),
        length,
        new Treatment(
            Entry.wordsIfAny(wounding),
            Entry.wordsIfAny(hormone),
            Entry.wordsIfAny(form),
            strength),
        dip,
        Entry.wordsIfAny(medium),
        Entry.wordsIfAny(note));
  }

  private @Nullable BigDecimal heat(Entry entry) {
    if (bottomHeatC == null || bottomHeatC.isBlank()) {
      return null;
    }
    Optional<BigDecimal> heat = Typed.decimal(bottomHeatC);
    if (heat.isEmpty()) {
      entry.wrong("bottomHeatC", "Type the temperature in °C, for example 23.");
    }
    return heat.orElse(null);
  }

  private @Nullable Integer strength(Entry entry) {
    if (ppm == null || ppm.isBlank()) {
      return null;
    }
    if (Typed.count(ppm).isEmpty() && Typed.decimal(ppm).isPresent()) {
      entry.wrong(
          "ppm", "“%s”: is that ppm or %%? 0.3 %% is 3,000 ppm. Type whole ppm.".formatted(ppm));
      return null;
    }
    Integer strength = entry.countIfAny("ppm", ppm);
    if (strength != null && strength > USUAL_PPM && !Boolean.TRUE.equals(strong)) {
      entry.wrong(
          "ppm",
          "%,d ppm is %s %%, above the usual 10,000. If it is right, tick “I checked the strength”."
              .formatted(
                  strength, BigDecimal.valueOf(strength, 4).stripTrailingZeros().toPlainString()));
    }
    return strength;
  }
}
