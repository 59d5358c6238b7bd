package trialwood.propagation;

import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import trialwood.crop.Crop;
import trialwood.crop.LookDays;
import trialwood.lineage.Accession;
import trialwood.lineage.AccessionKind;
import trialwood.lineage.Parentage;

/** A bench to test on: a crop, accessions by code, and trays stuck and counted in one line. */
@Component
public class Bench {

  public static final LocalDate STUCK = LocalDate.of(2022, 6, 6);
  public static final LocalDate COUNTED = STUCK.plusDays(28);

  private final EntityManager records;
  private final Sticking sticking;
  private final Closing closing;

  Bench(EntityManager records, Sticking sticking, Closing closing) {
    this.records = records;
    this.sticking = sticking;
    this.closing = closing;
  }

  private UUID crop() {
    return records
        .createQuery("select c.id from Crop c where c.code = 'SHRUB'", UUID.class)
        .getResultStream()
        .findFirst()
        .orElseGet(
            () -> {
              Crop shrub =
                  new Crop(
                      "SHRUB",
                      "Frutex",
                      "shrub",
                      true,
                      18,
                      24,
                      LookDays.of("7 14 18 21"),
                      85,
                      null);
              records.persist(shrub);
              return Objects.requireNonNull(shrub.id());
            });
  }

  public UUID accession(String code) {
    Accession accession =
        new Accession(crop(), code, AccessionKind.CULTIVAR, Parentage.unknown(), null);
    records.persist(accession);
    return Objects.requireNonNull(accession.id());
  }

  public StickingRun run(String code, LocalDate on, UUID check) {
    return sticking.run(
        new NewRun(
            code,
            crop(),
            on,
            on.plusDays(2),
            check,
            null,
            null,
            null,
            Environment.UNKNOWN,
            null,
            null,
            null,
            new Treatment(null, "K-IBA", "quick dip", 2000),
            3,
            null,
            null));
  }

  public Tray tray(StickingRun run, String label, UUID accession, int stuck) {
    Batch batch =
        sticking.batch(
            new Batch(
                Objects.requireNonNull(run.id()), "B-" + label, Batch.Source.ORTET, null, null));
    return sticking.tray(
        run, batch, new NewTray(label, accession, 24, run.fromDate(), stuck, "1", null, null));
  }

  /** Another tray of the same batch. */
  public Tray another(
      StickingRun run, Tray of, String label, UUID accession, int cells, int stuck) {
    Batch batch = Objects.requireNonNull(records.find(Batch.class, of.batchId()));
    return sticking.tray(
        run, batch, new NewTray(label, accession, cells, run.fromDate(), stuck, "1", null, null));
  }

  /** Trays of 24, one for each count of rooted ones, the rest dead; labels are code-1, code-2 … */
  public List<Tray> counted(StickingRun run, String code, UUID accession, int... rooted) {
    List<Tray> trays = new ArrayList<>();
    for (int each : rooted) {
      Tray tray = tray(run, run.code() + "-" + code + "-" + (trays.size() + 1), accession, 24);
      closing.finalCount(tray.unitId(), closing(run.fromDate().plusDays(28), each), null);
      trays.add(tray);
    }
    records.flush();
    return trays;
  }

  /**
   * One batch of that treatment in trays of 24, counted; labels are the batch's code-1, code-2 …
   */
  public void treated(
      StickingRun run, String code, UUID accession, @Nullable Treatment treatment, int... rooted) {
    Batch batch =
        sticking.batch(
            new Batch(Objects.requireNonNull(run.id()), code, Batch.Source.ORTET, treatment, null));
    for (int i = 0; i < rooted.length; i++) {
      NewTray tray =
          new NewTray(code + "-" + (i + 1), accession, 24, run.fromDate(), 24, "1", null, null);
      closing.finalCount(
          sticking.tray(run, batch, tray).unitId(),
          closing(run.fromDate().plusDays(28), rooted[i]),
          null);
    }
    records.flush();
  }

  public static NewFinalCount closing(LocalDate on, int rooted) {
    return new NewFinalCount(on, rooted, 0, 24 - rooted, 0, null, null, null);
  }

  /** Lets plain SQL see what was recorded in this transaction. */
  public void flush() {
    records.flush();
  }
}
