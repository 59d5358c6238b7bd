package trialwood.evidence;

import java.util.UUID;
import org.jspecify.annotations.Nullable;
import trialwood.lineage.CheckRole;

/**
 * A question to a source.
 *
 * @param metricKey one of the keys of its {@link EvidenceSource#metrics()}
 * @param traitId the trait, for metrics that are about one
 * @param check the role of the check to compare with, for metrics that are comparisons
 */
public record Ask(String metricKey, @Nullable UUID traitId, @Nullable CheckRole check) {}
