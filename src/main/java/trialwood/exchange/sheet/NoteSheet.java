package trialwood.exchange.sheet;

import java.time.LocalDate;
import java.util.List;
import org.springframework.stereotype.Component;
import trialwood.exchange.Column;
import trialwood.exchange.Row;
import trialwood.exchange.Rows;
import trialwood.exchange.Sheet;
import trialwood.note.NoteBook;
import trialwood.note.Subject;
import trialwood.note.Subjects;

/** The words of notes; photographs travel with the backup of the database. */
@Component
class NoteSheet extends Sheet {

  private static final Column<Subject.Kind> KIND =
      Column.choice("kind", Subject.Kind.class, "what the note is about").key();
  private static final Column<String> CODE =
      Column.text("code", 60, "its label, code or name").key();
  private static final Column<LocalDate> ON = Column.past("on", "the day it was seen").key();
  private static final Column<String> WORDS = Column.text("words", 1000, "what was seen").key();
  private static final Column<String> BY = Column.by();

  private final NoteBook book;
  private final Subjects subjects;

  NoteSheet(NoteBook book, Subjects subjects) {
    super(80, "notes", KIND, CODE, ON, WORDS, BY);
    this.book = book;
    this.subjects = subjects;
  }

  @Override
  protected void apply(Rows rows) {
    rows.each(
        row -> book.write(subject(row), row.the(ON), row.the(WORDS), List.of(), null, row.id(BY)));
  }

  private Subject subject(Row row) {
    return subjects
        .named(row.the(KIND), row.the(CODE))
        .orElseThrow(() -> row.refused(CODE, "Nothing of this kind is on record by that name."));
  }

  @Override
  protected String query() {
    return """
        select case when n.unit_id is not null then 'UNIT' when n.accession_id is not null then 'ACCESSION'
                    when n.run_id is not null then 'RUN' when n.site_id is not null then 'SITE'
                    else 'HOUSE' end,
               coalesce(u.label, a.code, r.code, s.code, h.name), n.on_date, n.words, w.initials
        from note n
          left join unit u on u.id = n.unit_id
          left join accession a on a.id = n.accession_id
          left join sticking_run r on r.id = n.run_id
          left join site s on s.id = n.site_id
          left join house h on h.id = n.house_id
          left join person w on w.id = n.person_id
        where n.words <> ''
          and not exists (select 1 from note m where m.supersedes_id = n.id)
        order by n.id
        """;
  }
}
