package trialwood.dossier;

/**
 * A trait of the candidate beside a known variety: values on the same kind of unit, at the same
 * site and in the same season only.
 *
 * @param variety its code
 */
public record Beside(String variety, Sample own, Sample other) {}
