package trialwood.dossier;

import jakarta.persistence.Column;
import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import java.util.Arrays;
import java.util.Collection;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.hibernate.annotations.UuidGenerator;
import org.jspecify.annotations.Nullable;
import trialwood.record.Check;

/** One way to protect a variety: whose law, which disclosures start its clock, how long it runs. */
@Entity
public class FilingRoute {

  /** Whether the document behind a route's periods was seen. */
  public enum Basis {
    SEEN,
    IN_PART,
    FROM_MEMORY;

    /** As words on a page. */
    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
  }

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  private @Nullable UUID id;

  private String code;
  private String name;
  private String territory;
  private @Nullable String law;
  @Embedded private Grace grace;
  private String startedBy;
  @Embedded private @Nullable Term term;

  @Enumerated(EnumType.STRING)
  @Column(name = "evidence")
  private Basis basis;

  /**
   * @param territory of the authority, as disclosures name it
   * @param startedBy the kinds of disclosure that start the clock
   */
  public FilingRoute(
      String code,
      String name,
      String territory,
      @Nullable String law,
      Grace grace,
      Collection<Disclosure.Kind> startedBy,
      Term term,
      Basis basis) {
    this.code = code.strip();
    this.name = name.strip();
    this.territory = territory.strip();
    this.law = law;
    this.grace = grace;
    this.startedBy =
        startedBy.stream().sorted().distinct().map(Enum::name).collect(Collectors.joining(" "));
    this.term = term;
    this.basis = basis;
    Check.that()
        .holds(!startedBy.isEmpty(), "started_by", "Say which disclosures start the clock.")
        .orRefuse();
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected FilingRoute() {}

  /** The clock that the disclosure starts on this route, if it starts one. */
  public Optional<NoveltyClock> clock(Disclosure disclosure) {
    return startedBy().contains(disclosure.kind())
        ? Optional.of(
            NoveltyClock.started(
                disclosure.onDate(), disclosure.territory().equalsIgnoreCase(territory), grace))
        : Optional.empty();
  }

  public Set<Disclosure.Kind> startedBy() {
    return Arrays.stream(startedBy.split(" "))
        .map(Disclosure.Kind::valueOf)
        .collect(Collectors.toCollection(() -> EnumSet.noneOf(Disclosure.Kind.class)));
  }

  public @Nullable UUID id() {
    return id;
  }

  public String code() {
    return code;
  }

  public String name() {
    return name;
  }

  public String territory() {
    return territory;
  }

  public @Nullable String law() {
    return law;
  }

  public Grace grace() {
    return grace;
  }

  public @Nullable Term term() {
    return term;
  }

  public Basis basis() {
    return basis;
  }
}
