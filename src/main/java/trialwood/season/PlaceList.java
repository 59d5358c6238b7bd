package trialwood.season;

import java.util.List;

/** What is to be done at one place. */
public record PlaceList(String place, List<Bundle> bundles) {}
