package trialwood.gate;

import trialwood.evidence.Evidence;

/**
 * What one criterion answers for one candidate.
 *
 * @param found the value and its counts as people read them
 * @param asked what the policy asks for
 * @param because how the verdict follows, in plain sentences
 */
public record Finding(
    Criterion criterion,
    Verdict verdict,
    String found,
    String asked,
    String because,
    Evidence evidence) {}
