package trialwood.container.web;

import java.time.Clock;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.springframework.stereotype.Component;
import trialwood.crop.ContainerClasses;
import trialwood.people.Person;
import trialwood.people.Persons;
import trialwood.web.Measures;

/** What the forms of the yard let people choose from, and the day they begin with. */
@Component
class Choices {

  private final ContainerClasses classes;
  private final Persons persons;
  private final Measures measures;
  private final Clock clock;

  Choices(ContainerClasses classes, Persons persons, Measures measures, Clock clock) {
    this.classes = classes;
    this.persons = persons;
    this.measures = measures;
    this.clock = clock;
  }

  Map<UUID, String> classes() {
    Map<UUID, String> options = new LinkedHashMap<>();
    classes
        .findAllByOrderByHighestLitres()
        .forEach(it -> options.put(Objects.requireNonNull(it.id()), it.code()));
    return options;
  }

  List<Person> people() {
    return persons.findByActiveTrueOrderByInitials();
  }

  LocalDate today() {
    return LocalDate.now(clock);
  }

  /** Today, as it stands in a box. */
  String todayTyped() {
    return measures.date(today()).replace('\u00a0', ' ');
  }
}
