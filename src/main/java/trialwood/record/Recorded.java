package trialwood.record;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Who a record comes from. The person who counted and the account that was signed in are two
 * things: a phone in the mist house is signed in once and passes from hand to hand.
 *
 * @param personId the person picked by initials; absent when nobody was named
 * @param account user name of the account that was signed in
 * @param recordedAt when it was stored, UTC, whole microseconds
 */
@Embeddable
public record Recorded(
    @Column(name = "person_id") @Nullable UUID personId, String account, Instant recordedAt) {}
