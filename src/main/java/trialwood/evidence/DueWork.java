package trialwood.evidence;

import java.time.LocalDate;

/**
 * Work that the records ask for.
 *
 * @param place where it is done: a bench, a yard, a site
 * @param due the day it should be done
 * @param what the work, in the imperative
 * @param why the record that asks for it
 * @param href page on which it is recorded, from the root of the application
 */
public record DueWork(String place, LocalDate due, String what, String why, String href) {}
