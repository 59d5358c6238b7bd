package trialwood.unit;

import jakarta.persistence.PrePersist;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import trialwood.record.CodeKey;
import trialwood.record.Refused;

/**
 * Which code stands for which label. A new unit gets one when it is stored, unless its label
 * brought one along from another record; a label keeps its code for good, so that what is printed
 * opens.
 */
@Repository
public class ShortCodes {

  private final JdbcClient jdbc;

  ShortCodes(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  /**
   * Takes in a code that was given elsewhere, before its unit comes.
   *
   * @throws Refused when the code or the label is taken
   */
  @Transactional
  public void bring(String label, ShortCode code) {
    String key = CodeKey.of(label);
    if (isTaken("code", code.text())) {
      throw new Refused("short_code", "The code %s is on another label.".formatted(code));
    }
    if (isTaken("label_key", key)) {
      throw new Refused("label", "The label %s has a code already.".formatted(label.strip()));
    }
    insert(key, code);
  }

  /** After codes were brought: draws as many numbers, so that what comes next need not search. */
  @Transactional
  public void passBrought() {
    jdbc.sql("select max(n) from (select nextval('short_code_seq') as n from short_code) drawn")
        .query(Long.class)
        .optional();
  }

  /** A number that is taken, or cannot be written, is passed over. */
  @PrePersist
  void give(Unit unit) {
    String key = CodeKey.of(unit.label());
    boolean given = false;
    while (!given) {
      given =
          ShortCode.of(draw()).filter(code -> insert(key, code)).isPresent()
              || isTaken("label_key", key);
    }
  }

  private long draw() {
    return jdbc.sql("select nextval('short_code_seq')").query(Long.class).single();
  }

  private boolean isTaken(String column, String value) {
    return jdbc.sql("select count(*) from short_code where " + column + " = ?")
            .param(value)
            .query(Integer.class)
            .single()
        > 0;
  }

  /** Whether neither the label nor the code was taken. */
  private boolean insert(String key, ShortCode code) {
    return jdbc.sql("insert into short_code (code, label_key) values (?, ?) on conflict do nothing")
            .params(code.text(), key)
            .update()
        == 1;
  }
}
