package trialwood.note;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import trialwood.record.Recorder;
import trialwood.record.Refused;
import trialwood.web.Instead;

/** Writes notes with their photographs, and reads them again. */
@Service
public class NoteBook {

  private final Notes notes;
  private final Photographs photographs;
  private final JdbcClient jdbc;
  private final Recorder recorder;
  private final Clock clock;

  NoteBook(Notes notes, Photographs photographs, JdbcClient jdbc, Recorder recorder, Clock clock) {
    this.notes = notes;
    this.photographs = photographs;
    this.jdbc = jdbc;
    this.recorder = recorder;
    this.clock = clock;
  }

  /**
   * @throws Refused when there is nothing to keep, or the earlier note was replaced before
   */
  @Transactional
  public Note write(
      Subject about,
      LocalDate on,
      String words,
      List<Developed> pictures,
      @Nullable Instead instead,
      @Nullable UUID personId) {
    Note note =
        new Note(
            about, on, words, !pictures.isEmpty(), LocalDate.now(clock), recorder.by(personId));
    if (instead != null) {
      replace(note, about, instead);
    }
    UUID id = Objects.requireNonNull(notes.save(note).id());
    for (int i = 0; i < pictures.size(); i++) {
      photographs.save(new Photograph(id, i + 1, pictures.get(i)));
    }
    return note;
  }

  private void replace(Note note, Subject about, Instead instead) {
    if (notes.findById(instead.earlier()).filter(it -> it.isAbout(about)).isEmpty()) {
      throw new Refused("corrects", "There is no such note.");
    }
    if (notes.existsBySupersedesId(instead.earlier())) {
      throw new Refused("corrects", "This note was replaced before. Open the notes afresh.");
    }
    note.insteadOf(instead.earlier(), instead.reason());
  }

  /** The notes about something, newest first, replaced ones too. */
  public List<NoteLine> about(Subject subject) {
    String column = subject.kind().word() + "_id";
    Map<UUID, List<NoteLine.Picture>> pictures =
        jdbc
            .sql(
                """
                select f.id, f.note_id, f.width, f.height, f.taken_on
                from photograph f join note n on n.id = f.note_id
                where n.%s = :id
                order by f.nth
                """
                    .formatted(column))
            .param("id", subject.id())
            .query(NoteLine.Picture.class)
            .list()
            .stream()
            .collect(Collectors.groupingBy(NoteLine.Picture::noteId));
    return jdbc
        .sql(
            """
            select n.id, n.on_date, n.words, p.initials, n.supersede_reason as reason,
                   case when exists (select 1 from note s where s.supersedes_id = n.id)
                        then true else false end as replaced
            from note n left join person p on p.id = n.person_id
            where n.%s = :id
            order by n.on_date desc, n.recorded_at desc
            """
                .formatted(column))
        .param("id", subject.id())
        .query(Written.class)
        .list()
        .stream()
        .map(note -> note.with(pictures.getOrDefault(note.id(), List.of())))
        .toList();
  }

  /** A note without its photographs. */
  record Written(
      UUID id,
      LocalDate onDate,
      String words,
      @Nullable String initials,
      boolean replaced,
      @Nullable String reason) {

    NoteLine with(List<NoteLine.Picture> pictures) {
      return new NoteLine(id, onDate, words, initials, replaced, reason, pictures);
    }
  }
}
