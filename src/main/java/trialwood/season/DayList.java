package trialwood.season;

import java.time.LocalDate;
import java.util.List;

/** What comes up on one day. */
public record DayList(LocalDate day, List<PlaceList> places) {}
