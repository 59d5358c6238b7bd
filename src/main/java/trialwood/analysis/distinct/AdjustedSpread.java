package trialwood.analysis.distinct;

/**
 * A variety's spread between plants in one year, ln(sd + 1), freed of the trend along the means.
 *
 * @param variety its name or number
 * @param year of test
 * @param value less the trend at its mean, plus the year's reference mean
 */
public record AdjustedSpread(String variety, int year, double value) {}
