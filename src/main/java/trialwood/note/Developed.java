package trialwood.note;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A photograph as it is kept: upright, JPEG, without what a phone writes into its pictures.
 *
 * @param picture at most {@value Darkroom#LONGEST} pixels long
 * @param small at most {@value Darkroom#SMALL} pixels long
 * @param takenOn the day on which the camera says that it was taken
 */
public record Developed(
    byte[] picture, byte[] small, int width, int height, @Nullable LocalDate takenOn) {}
