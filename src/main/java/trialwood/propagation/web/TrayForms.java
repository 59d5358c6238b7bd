package trialwood.propagation.web;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import trialwood.propagation.NewFinalCount;
import trialwood.propagation.TakenOut;
import trialwood.propagation.TakenSoFar;
import trialwood.propagation.TrayRecords;
import trialwood.web.Entry;
import trialwood.web.Form;

/** What bench staff type about one tray. Everything stays text until it has been read. */
final class TrayForms {

  private TrayForms() {}

  /** An interim look at a sample. */
  record Look(
      @Nullable UUID formKey,
      @Nullable String on,
      @Nullable String lifted,
      @Nullable String rooted,
      @Nullable String alive,
      @Nullable String deadRemoved,
      @Nullable String note,
      @Nullable String by)
      implements Form {

    static Look fresh(LocalDate today) {
      return new Look(UUID.randomUUID(), today.toString(), "", "", "", "0", "", null);
    }

    void record(TrayRecords records, UUID tray, LocalDate today) {
      Entry entry = new Entry();
      LocalDate day = entry.day("on", on, today);
      int up = entry.count("lifted", lifted);
      int withRoots = entry.count("rooted", rooted);
      int living = entry.count("alive", alive);
      int dead = entry.count("deadRemoved", deadRemoved);
      UUID person = entry.person("by", by);
      entry.orRefuse();
      records.look(tray, day, up, withRoots, living, dead, Entry.wordsIfAny(note), person);
    }
  }

  /** The count that closes the tray. */
  record Final(
      @Nullable UUID formKey,
      @Nullable String on,
      @Nullable String rooted,
      @Nullable String aliveWithoutRoots,
      @Nullable String dead,
      @Nullable String takenOut,
      @Nullable String rootScore,
      @Nullable String settles,
      @Nullable String note,
      @Nullable String by)
      implements Form {

    static Final fresh(LocalDate today, TakenSoFar taken) {
      return new Final(
          UUID.randomUUID(),
          today.toString(),
          "",
          "",
          "",
          String.valueOf(taken.number()),
          null,
          null,
          "",
          null);
    }

    void record(TrayRecords records, UUID tray, LocalDate today) {
      Entry entry = new Entry();
      NewFinalCount count =
          new NewFinalCount(
              entry.day("on", on, today),
              entry.count("rooted", rooted),
              entry.count("aliveWithoutRoots", aliveWithoutRoots),
              entry.count("dead", dead),
              entry.count("takenOut", takenOut),
              entry.countIfAny("rootScore", rootScore),
              Entry.wordsIfAny(note),
              settles);
      UUID person = entry.person("by", by);
      entry.orRefuse();
      records.finalCount(tray, count, person);
    }
  }

  /** Cuttings that leave before the final count. */
  record Taken(
      @Nullable UUID formKey,
      @Nullable String on,
      @Nullable String number,
      @Nullable String rooted,
      TakenOut.@Nullable Fate fate,
      @Nullable String note,
      @Nullable String by)
      implements Form {

    static Taken fresh(LocalDate today) {
      return new Taken(UUID.randomUUID(), today.toString(), "1", null, null, "", null);
    }

    void record(TrayRecords records, UUID tray, LocalDate today) {
      Entry entry = new Entry();
      LocalDate day = entry.day("on", on, today);
      int out = entry.count("number", number);
      boolean roots = "yes".equals(entry.words("rooted", rooted, "Say whether they had roots."));
      if (fate == null) {
        entry.wrong("fate", "Say what became of them.");
      }
      UUID person = entry.person("by", by);
      entry.orRefuse();
      records.takenOut(
          tray,
          day,
          out,
          roots,
          java.util.Objects.requireNonNull(fate),
          Entry.wordsIfAny(note),
          person);
    }
  }

  /** Life off the mist. */
  record Wean(
      @Nullable UUID formKey,
      @Nullable String lastMist,
      @Nullable String on,
      @Nullable String alive,
      @Nullable String wilted,
      @Nullable String shock,
      @Nullable String note,
      @Nullable String by)
      implements Form {

    static Wean fresh(LocalDate today, @Nullable LocalDate lastMist) {
      return new Wean(
          UUID.randomUUID(),
          lastMist == null ? "" : lastMist.toString(),
          today.toString(),
          "",
          "",
          "",
          "",
          null);
    }

    void record(TrayRecords records, UUID tray, LocalDate today) {
      Entry entry = new Entry();
      LocalDate mist = entry.day("lastMist", lastMist, today);
      LocalDate day = entry.day("on", on, today);
      int living = entry.count("alive", alive);
      Integer wilting = entry.countIfAny("wilted", wilted);
      Integer shocked = entry.countIfAny("shock", shock);
      UUID person = entry.person("by", by);
      entry.orRefuse();
      records.weaning(tray, mist, day, living, wilting, shocked, Entry.wordsIfAny(note), person);
    }
  }

  /** Void, or counting again. */
  record Ruling(
      @Nullable UUID formKey,
      @Nullable String on,
      @Nullable String counts,
      @Nullable String reason,
      @Nullable String by)
      implements Form {

    static Ruling fresh(LocalDate today) {
      return new Ruling(UUID.randomUUID(), today.toString(), null, "", null);
    }

    void record(TrayRecords records, UUID tray, LocalDate today) {
      Entry entry = new Entry();
      LocalDate day = entry.day("on", on, today);
      String ruling = entry.words("counts", counts, "Say whether the tray counts.");
      String because = entry.words("reason", reason, "Say why.");
      UUID person = entry.person("by", by);
      entry.orRefuse();
      records.rule(tray, day, "yes".equals(ruling), because, person);
    }
  }
}
