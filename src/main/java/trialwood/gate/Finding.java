package trialwood.gate;

import java.util.LinkedHashMap;
import java.util.Map;
import trialwood.evidence.Evidence;

/**
 * What one criterion answers for one candidate.
 *
 * @param found the value and its counts as people read them
 * @param asked what the policy asks for
 * @param because how the verdict follows, in plain sentences
 */
public record Finding(
    Criterion criterion,
    Verdict verdict,
    String found,
    String asked,
    String because,
    Evidence evidence) {

  /** From the address of each record behind it to what the record is, in their order. */
  public Map<String, String> records() {
    Map<String, String> records = new LinkedHashMap<>();
    evidence.records().forEach(record -> records.putIfAbsent(record.href(), record.text()));
    return records;
  }
}
