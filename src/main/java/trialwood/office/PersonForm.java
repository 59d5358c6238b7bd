package trialwood.office;

import java.util.UUID;
import org.jspecify.annotations.Nullable;
import trialwood.people.Person;
import trialwood.web.Form;

/** What is said of a person. The version is that of the person when the page was opened. */
record PersonForm(
    @Nullable UUID formKey,
    int version,
    @Nullable String initials,
    @Nullable String name,
    @Nullable String duty,
    boolean active)
    implements Form {

  PersonForm {
    initials = initials == null ? "" : initials;
    name = name == null ? "" : name;
  }

  static PersonForm blank() {
    return new PersonForm(UUID.randomUUID(), 0, "", "", "", true);
  }

  static PersonForm of(Person person) {
    return new PersonForm(
        UUID.randomUUID(),
        person.version(),
        person.initials(),
        person.name(),
        person.duty(),
        person.isActive());
  }
}
