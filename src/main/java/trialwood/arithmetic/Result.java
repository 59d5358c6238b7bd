package trialwood.arithmetic;

import java.util.List;

/** What came out, the answer first. */
record Result(List<Line> lines, List<String> remarks) {

  record Line(String label, String value) {}

  static Result of(Typing typed, Line... lines) {
    return new Result(List.of(lines), typed.remarks());
  }
}
