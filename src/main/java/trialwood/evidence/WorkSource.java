package trialwood.evidence;

import java.time.LocalDate;
import java.util.List;

/** A stage that knows which work its records ask for. */
public interface WorkSource {

  /** What is due on that day or overdue, and what comes next as far as it can tell. */
  List<DueWork> due(LocalDate today);
}
