package trialwood.evidence;

import java.util.List;
import java.util.UUID;

/** A stage that can tell what happened to an accession. */
public interface LifeLineSource {

  /** What happened, in no particular order. */
  List<LifeEvent> events(UUID accessionId);
}
