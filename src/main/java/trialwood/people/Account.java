package trialwood.people;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.FetchType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.Version;
import java.util.HashSet;
import java.util.Set;
import java.util.UUID;
import org.hibernate.annotations.UuidGenerator;
import org.jspecify.annotations.Nullable;
import trialwood.record.Check;

/** What signs in: a person's own account, or the shared phone of the mist house. */
@Entity
public class Account {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  private @Nullable UUID id;

  @Version private int version;
  private String username;
  private String password;

  @Enumerated(EnumType.STRING)
  private Role role;

  private boolean enabled = true;
  private @Nullable UUID personId;

  @ElementCollection(fetch = FetchType.EAGER)
  @CollectionTable(name = "account_site", joinColumns = @JoinColumn(name = "account_id"))
  @Column(name = "site_id")
  private Set<UUID> sites = new HashSet<>();

  /**
   * @param password already encoded
   * @param personId the person whose initials are offered first; none for a shared phone
   * @param sites the sites of a cooperator; empty for every other role
   */
  public Account(
      String username, String password, Role role, @Nullable UUID personId, Set<UUID> sites) {
    this.username = username.strip();
    this.password = password;
    this.role = role;
    this.personId = personId;
    this.sites = new HashSet<>(sites);
    Check.that()
        .holds(
            this.username.matches("[\\p{L}\\p{N}._-]{2,60}"),
            "username",
            "A user name is 2 to 60 letters, digits, points, dashes or underscores.")
        .holds(
            role != Role.COOPERATOR || !sites.isEmpty(),
            "sites",
            "Name at least one site that the cooperator may see.")
        .holds(
            role == Role.COOPERATOR || sites.isEmpty(),
            "sites",
            "Only a cooperator is bound to sites.")
        .orRefuse();
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected Account() {}

  /** Nobody signs in with it any more; what was recorded with it stays. */
  void close() {
    enabled = false;
  }

  void reopen() {
    enabled = true;
  }

  public @Nullable UUID id() {
    return id;
  }

  public String username() {
    return username;
  }

  String password() {
    return password;
  }

  public Role role() {
    return role;
  }

  public boolean isEnabled() {
    return enabled;
  }

  public @Nullable UUID personId() {
    return personId;
  }

  public Set<UUID> sites() {
    return Set.copyOf(sites);
  }
}
