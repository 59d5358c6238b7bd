package trialwood.evidence;

import java.time.LocalDate;

/**
 * Something that happened to an accession.
 *
 * @param place the stage as people say it: field, propagation, ...
 * @param sentence what happened
 * @param href page of the record, from the root of the application
 */
public record LifeEvent(LocalDate date, String place, String sentence, String href) {}
