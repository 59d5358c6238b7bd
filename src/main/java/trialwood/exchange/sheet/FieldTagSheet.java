package trialwood.exchange.sheet;

import java.time.LocalDate;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import trialwood.exchange.Column;
import trialwood.exchange.Known;
import trialwood.exchange.Row;
import trialwood.exchange.Rows;
import trialwood.exchange.Sheet;
import trialwood.field.NewTag;
import trialwood.field.Population;
import trialwood.field.Populations;
import trialwood.field.Tagging;

/** The tags hung in the field; each makes a candidate. */
@Component
class FieldTagSheet extends Sheet {

  private static final Column<String> ACCESSION =
      Column.text("accession", 30, "the candidate's code").key();
  private static final Column<String> POPULATION =
      Column.code("population", Known.POPULATION, "where the plant stands").required();
  private static final Column<Integer> ROW = Column.count("row", "its row").required();
  private static final Column<Integer> POSITION =
      Column.count("position", "its planting slot in the row").required();
  private static final Column<LocalDate> ON = Column.past("on", "the day it was tagged").required();
  private static final Column<String> BY = Column.by();
  private static final Column<String> SEEN =
      Column.text("seen", 300, "what was seen, in about ten words").required();
  private static final Column<String> TALK_NAME =
      Column.text("talk_name", 60, "what people call it; never a denomination");
  private static final Column<String> SEED_PARENT =
      Column.code("seed_parent", Known.ACCESSION, "the plant that bore the seed, if known");
  private static final Column<String> DESCRIPTION =
      Column.text("description", 300, "what it looks like");
  private static final Column<Boolean> OUTSTANDING =
      Column.yesNo("outstanding", "whether it must not be lost lightly");

  private final Tagging tagging;
  private final Populations populations;

  FieldTagSheet(Tagging tagging, Populations populations) {
    super(
        21,
        "field-tags",
        ACCESSION,
        POPULATION,
        ROW,
        POSITION,
        ON,
        BY,
        SEEN,
        TALK_NAME,
        SEED_PARENT,
        DESCRIPTION,
        OUTSTANDING);
    this.tagging = tagging;
    this.populations = populations;
  }

  @Override
  protected void apply(Rows rows) {
    Map<@Nullable UUID, Population> known =
        populations.findAll().stream()
            .collect(Collectors.toMap(Population::id, Function.identity()));
    rows.each(row -> tagging.hang(Objects.requireNonNull(known.get(row.id(POPULATION))), tag(row)));
  }

  private static NewTag tag(Row row) {
    return new NewTag(
        row.the(ACCESSION),
        row.the(ROW),
        row.the(POSITION),
        row.the(ON),
        row.id(BY),
        row.the(SEEN),
        row.maybeId(SEED_PARENT),
        row.maybe(TALK_NAME),
        row.maybe(DESCRIPTION),
        row.orElse(OUTSTANDING, false));
  }

  @Override
  protected String query() {
    return """
        select a.code, p.code, t.row_number, t.position_number, t.tagged_on, w.initials, t.seen,
               a.talk_name, s.code, a.description,
               exists (select 1 from candidate_event e
                       where e.accession_id = a.id and e.kind = 'MARKED_OUTSTANDING'
                         and e.on_date = t.tagged_on and e.note = t.seen)
        from field_tag t
          join accession a on a.id = t.accession_id
          join population p on p.id = t.population_id
          left join person w on w.id = t.person_id
          left join accession s on s.id = a.seed_parent_id
        order by t.id
        """;
  }
}
