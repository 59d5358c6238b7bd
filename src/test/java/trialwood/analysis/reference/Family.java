package trialwood.analysis.reference;

import java.util.Map;
import java.util.function.Function;

/** How one family of methods answers the rows of the reference files. */
interface Family {

  /**
   * By the name of the method in the files: what we make of a row. A number; NaN where we say that
   * there is none; or text, for the few rows that hold text. An unknown quantity throws {@link
   * UnknownRow}.
   */
  Map<String, Function<Row, Object>> methods();
}
