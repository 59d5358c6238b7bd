package trialwood.record;

/**
 * One thing that is wrong with what somebody typed.
 *
 * @param field name of the form field or the import column
 * @param sentence what is wrong and what to do, in plain words
 */
public record Problem(String field, String sentence) {}
