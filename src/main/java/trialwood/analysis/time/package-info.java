/**
 * Time to root. Looks only bracket the day, so the truth is an interval: Turnbull's curve assumes
 * no shape, the log-normal, Weibull and log-logistic fits one, each with or without a share of
 * cuttings that never roots. Where the days themselves are known there are Kaplan–Meier and
 * log-rank. Times are days after sticking, above 0; "survival" is the share that has not rooted
 * yet.
 */
@org.jspecify.annotations.NullMarked
package trialwood.analysis.time;
