package trialwood.dossier;

/**
 * A trait of the candidate beside a known variety: the last season in which both were seen, on the
 * same kind of unit and at the same sites.
 *
 * @param variety its code
 */
public record Beside(String variety, Sample own, Sample other) {}
