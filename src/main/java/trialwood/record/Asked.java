package trialwood.record;

import java.util.List;

/**
 * An unusual record: nothing was stored yet, and each problem is a question to whoever typed it.
 */
public class Asked extends Refused {

  public Asked(List<Problem> questions) {
    super(questions);
  }
}
