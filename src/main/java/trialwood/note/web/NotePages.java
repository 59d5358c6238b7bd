package trialwood.note.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import trialwood.note.Darkroom;
import trialwood.note.Developed;
import trialwood.note.NoteBook;
import trialwood.note.NoteLine;
import trialwood.note.Subject;
import trialwood.note.Subjects;
import trialwood.people.Person;
import trialwood.people.Persons;
import trialwood.record.Refused;
import trialwood.web.Entry;
import trialwood.web.ForBench;
import trialwood.web.ForStaff;
import trialwood.web.Form;
import trialwood.web.Forms;
import trialwood.web.Instead;
import trialwood.web.NotFound;

/** The notes about one thing, and one more. */
@Controller
@RequestMapping("/notes/{kind}/{code}")
class NotePages {

  private static final int MOST_PICTURES = 6;

  private final NoteBook book;
  private final Subjects subjects;
  private final Persons persons;
  private final Forms forms;
  private final Clock clock;

  NotePages(NoteBook book, Subjects subjects, Persons persons, Forms forms, Clock clock) {
    this.book = book;
    this.subjects = subjects;
    this.persons = persons;
    this.forms = forms;
    this.clock = clock;
  }

  record NoteForm(
      @Nullable UUID formKey,
      @Nullable String words,
      @Nullable String on,
      @Nullable String by,
      @Nullable UUID corrects,
      @Nullable String supersedeReason)
      implements Form {

    void write(NoteBook book, Subject about, List<MultipartFile> files, LocalDate today) {
      Entry entry = new Entry();
      LocalDate day = entry.day("on", on, today);
      UUID person = entry.person("by", by);
      Instead instead = Instead.read(entry, corrects, supersedeReason);
      entry.orRefuse();
      book.write(
          about, day, Objects.requireNonNullElse(words, ""), developed(files), instead, person);
    }

    private static List<Developed> developed(List<MultipartFile> files) {
      List<MultipartFile> sent = files.stream().filter(file -> !file.isEmpty()).toList();
      if (sent.size() > MOST_PICTURES) {
        throw new Refused("photographs", "At most %d at a time.".formatted(MOST_PICTURES));
      }
      return sent.stream().map(NoteForm::bytes).map(Darkroom::develop).toList();
    }

    private static byte[] bytes(MultipartFile file) {
      try {
        return file.getBytes();
      } catch (IOException lost) {
        throw new UncheckedIOException(lost);
      }
    }
  }

  @ModelAttribute("subject")
  Subject subject(@PathVariable String kind, @PathVariable String code) {
    return kindOf(kind)
        .flatMap(it -> subjects.named(it, code))
        .orElseThrow(NotFound.of(kind + " " + code));
  }

  private static Optional<Subject.Kind> kindOf(String word) {
    for (Subject.Kind kind : Subject.Kind.values()) {
      if (kind.name().equals(word.toUpperCase(Locale.ROOT))) {
        return Optional.of(kind);
      }
    }
    return Optional.empty();
  }

  @ModelAttribute("notes")
  List<NoteLine> notes(@ModelAttribute("subject") Subject subject) {
    return book.about(subject);
  }

  @ModelAttribute("people")
  List<Person> people() {
    return persons.findByActiveTrueOrderByInitials();
  }

  @GetMapping
  @ForStaff
  String open(
      @ModelAttribute("notes") List<NoteLine> notes,
      @RequestParam Optional<UUID> corrects,
      Model page) {
    String today = LocalDate.now(clock).toString();
    page.addAttribute(
        "form",
        corrects
            .map(id -> found(notes, id))
            .map(
                note ->
                    new NoteForm(
                        UUID.randomUUID(),
                        note.words(),
                        note.onDate().toString(),
                        null,
                        note.id(),
                        ""))
            .orElseGet(() -> new NoteForm(UUID.randomUUID(), "", today, null, null, null)));
    return "note/notes";
  }

  private static NoteLine found(List<NoteLine> notes, UUID id) {
    return notes.stream()
        .filter(note -> note.id().equals(id) && !note.replaced())
        .findFirst()
        .orElseThrow(NotFound.of("such note"));
  }

  @PostMapping
  @ForBench
  String write(
      @ModelAttribute("subject") Subject subject,
      @ModelAttribute("form") @Nullable NoteForm form,
      BindingResult said,
      @RequestParam(required = false) @Nullable List<MultipartFile> photographs,
      Model page,
      RedirectAttributes next) {
    List<MultipartFile> files = Objects.requireNonNullElse(photographs, List.of());
    if (!forms.store(
        form,
        said,
        () -> Objects.requireNonNull(form).write(book, subject, files, LocalDate.now(clock)))) {
      page.addAttribute("chooseAgain", files.stream().anyMatch(file -> !file.isEmpty()));
      return "note/notes";
    }
    next.addFlashAttribute("status", "Noted about " + subject.name() + ".");
    next.addAttribute("kind", subject.kind().word());
    next.addAttribute("code", subject.code());
    return "redirect:/notes/{kind}/{code}";
  }
}
