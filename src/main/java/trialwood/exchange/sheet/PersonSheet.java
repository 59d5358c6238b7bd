package trialwood.exchange.sheet;

import org.springframework.stereotype.Component;
import trialwood.exchange.Column;
import trialwood.exchange.Rows;
import trialwood.exchange.Sheet;
import trialwood.people.Person;
import trialwood.people.Persons;

/** The people whose initials stand on records. */
@Component
class PersonSheet extends Sheet {

  private static final Column<String> INITIALS =
      Column.text("initials", 4, "what stands on the records").key();
  private static final Column<String> NAME = Column.text("name", 80, "the whole name").required();
  private static final Column<String> DUTY = Column.text("duty", 80, "what the person does");

  private final Persons persons;

  PersonSheet(Persons persons) {
    super(4, "people", INITIALS, NAME, DUTY);
    this.persons = persons;
  }

  @Override
  protected void apply(Rows rows) {
    rows.each(row -> persons.save(new Person(row.the(INITIALS), row.the(NAME), row.maybe(DUTY))));
  }

  @Override
  protected String query() {
    return """
        select initials, name, duty
        from person
        order by id
        """;
  }
}
