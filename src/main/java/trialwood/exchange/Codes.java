package trialwood.exchange;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.springframework.jdbc.core.JdbcTemplate;
import trialwood.record.CodeKey;

/** What codes stand for, during one import: each list is read once, when it is first asked for. */
final class Codes {

  private final JdbcTemplate jdbc;
  private final Map<Known, Map<String, UUID>> lists = new EnumMap<>(Known.class);

  Codes(JdbcTemplate jdbc) {
    this.jdbc = jdbc;
  }

  /** Finds a code however it was typed. */
  Optional<UUID> find(Known known, String typed) {
    return Optional.ofNullable(list(known).get(CodeKey.of(typed)));
  }

  /** Adds what a row of this very import has made, so that later rows can name it. */
  void add(Known known, String code, UUID id) {
    list(known).put(CodeKey.of(code), id);
  }

  private Map<String, UUID> list(Known known) {
    return lists.computeIfAbsent(known, this::read);
  }

  private Map<String, UUID> read(Known known) {
    Map<String, UUID> list = new HashMap<>();
    jdbc.query(
        known.query(),
        row -> {
          list.put(CodeKey.of(row.getString(1)), row.getObject(2, UUID.class));
        });
    return list;
  }
}
