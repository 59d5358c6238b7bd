package trialwood.trial.web;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import trialwood.crop.Trait;

/** What is on record already for the plots of a sheet. */
@Component
class SheetBook {

  private final JdbcClient jdbc;

  SheetBook(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  /**
   * The records of that day as people read them, by label of the plot, a slash, code of the trait.
   */
  Map<String, String> on(LocalDate day, List<TrialBook.PlotRow> plots, List<Trait> traits) {
    Map<String, String> known = new HashMap<>();
    if (plots.isEmpty() || traits.isEmpty()) {
      return known;
    }
    jdbc.sql(
            """
            select u.label, t.code, o.number_value, o.date_value, o.text_value, o.none_because
            from observation o
            join unit u on u.id = o.unit_id
            join trait t on t.id = o.trait_id
            where o.unit_id in (:plots) and o.trait_id in (:traits) and o.on_date = :day
              and not exists (select 1 from observation later where later.supersedes_id = o.id)
            """)
        .param("plots", plots.stream().map(TrialBook.PlotRow::unitId).toList())
        .param("traits", traits.stream().map(Trait::id).toList())
        .param("day", day)
        .query(
            row -> {
              BigDecimal number = row.getBigDecimal("number_value");
              String date = row.getString("date_value");
              String words = row.getString("text_value");
              String none = row.getString("none_because");
              known.put(
                  row.getString("label") + "/" + row.getString("code"),
                  number != null
                      ? number.stripTrailingZeros().toPlainString()
                      : date != null
                          ? date
                          : words != null
                              ? words
                              : none.toLowerCase(Locale.ROOT).replace('_', ' '));
            });
    return known;
  }
}
