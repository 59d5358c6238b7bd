package trialwood.trial;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.JoinColumn;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import trialwood.record.Check;
import trialwood.record.Fact;
import trialwood.record.Recorded;

/**
 * Something that befell a site. It takes the traits it names out of the reckoning between its two
 * dates, both included; what was recorded stays where it is.
 */
@Entity
public class SiteEvent extends Fact {

  /** What befell the site. */
  public enum Kind {
    HAIL,
    FROST,
    FLOOD,
    HERBICIDE,
    ANIMALS,
    OTHER;

    /** As a word on a page. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  private String code;
  private UUID siteId;
  private @Nullable UUID trialId;
  private LocalDate onDate;

  @Enumerated(EnumType.STRING)
  private Kind kind;

  private String note;
  private @Nullable LocalDate voidFrom;
  private @Nullable LocalDate voidUntil;

  @ElementCollection
  @CollectionTable(name = "site_event_trait", joinColumns = @JoinColumn(name = "event_id"))
  @Column(name = "trait_id")
  private Set<UUID> traits = new HashSet<>();

  @ElementCollection
  @CollectionTable(name = "site_event_plot", joinColumns = @JoinColumn(name = "event_id"))
  @Column(name = "plot_id")
  private Set<UUID> plots = new HashSet<>();

  SiteEvent(NewSiteEvent event, Recorded recorded) {
    super(recorded);
    this.code = event.code().strip();
    this.siteId = event.siteId();
    this.trialId = event.trialId();
    this.onDate = event.on();
    this.kind = event.kind();
    this.note = event.note().strip();
    this.voidFrom = event.voidFrom();
    this.voidUntil = event.voidUntil();
    this.traits.addAll(event.traits());
    this.plots.addAll(event.plots());
    Check.that()
        .holds(
            !code.isEmpty() && code.length() <= 30,
            "event",
            "Give the event a code of at most 30 letters, for example HAIL-CH-25.")
        .holds(
            !note.isEmpty() && note.length() <= 300,
            "note",
            "Say what happened, in up to 300 letters.")
        .holds(
            traits.isEmpty() || (voidFrom != null && voidUntil != null),
            "void_from",
            "Say from when until when the traits are taken out.")
        .holds(
            !traits.isEmpty() || (voidFrom == null && voidUntil == null && plots.isEmpty()),
            "traits",
            "Name the traits that are taken out, or leave dates and plots empty.")
        .holds(
            voidFrom == null || voidUntil == null || !voidUntil.isBefore(voidFrom),
            "void_until",
            "The last day taken out lies before the first.")
        .orRefuse();
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected SiteEvent() {}

  public String code() {
    return code;
  }

  public UUID siteId() {
    return siteId;
  }

  /** The trial it is about; none where it befell all that stood there. */
  public @Nullable UUID trialId() {
    return trialId;
  }

  public LocalDate onDate() {
    return onDate;
  }

  public Kind kind() {
    return kind;
  }

  public String note() {
    return note;
  }

  public @Nullable LocalDate voidFrom() {
    return voidFrom;
  }

  /** The last day taken out. */
  public @Nullable LocalDate voidUntil() {
    return voidUntil;
  }

  public Set<UUID> traits() {
    return Set.copyOf(traits);
  }

  /** The plots taken out; empty for all of the site. */
  public Set<UUID> plots() {
    return Set.copyOf(plots);
  }
}
