package trialwood.trial;

import java.time.LocalDate;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * An event at a site as it is reported.
 *
 * @param trialId the trial it is about; none for all that stood there
 * @param voidFrom first day, and {@code voidUntil} last day on which the traits are taken out
 * @param traits what is taken out; empty where the event is only kept in mind
 * @param plots units of the plots it takes out; empty for all of the site
 */
public record NewSiteEvent(
    String code,
    UUID siteId,
    @Nullable UUID trialId,
    LocalDate on,
    SiteEvent.Kind kind,
    String note,
    @Nullable LocalDate voidFrom,
    @Nullable LocalDate voidUntil,
    Set<UUID> traits,
    Set<UUID> plots,
    @Nullable UUID personId) {}
