package trialwood.container;

/** A number tied to one plant of a lot, and the label that bears it. */
public record NewPlant(String label, int number) {}
