package trialwood.dossier;

import jakarta.persistence.Embeddable;
import org.jspecify.annotations.Nullable;

/**
 * What follows a filing, where it is known.
 *
 * @param priorityMonths months in which a first filing is honoured by other offices
 * @param termYears years that the right would last
 * @param termYearsTree the same for what the authority takes for a tree or a vine
 */
@Embeddable
public record Term(
    @Nullable Integer priorityMonths,
    @Nullable Integer termYears,
    @Nullable Integer termYearsTree) {}
