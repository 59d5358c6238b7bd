package trialwood.office;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import trialwood.people.Person;
import trialwood.web.EditForm;

/** What is said of a person. The version is that of the person when the page was opened. */
record PersonForm(
    @Nullable UUID formKey,
    @Nullable Integer version,
    @Nullable String initials,
    @Nullable String name,
    @Nullable String duty,
    @Nullable Boolean active)
    implements EditForm {

  PersonForm {
    version = version == null ? -1 : version;
    initials = initials == null ? "" : initials;
    active = active != null && active;
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

  @Override
  public Map<String, String> words() {
    Map<String, String> words = new LinkedHashMap<>();
    words.put("Name", name == null ? "" : name.strip());
    words.put("Duty", duty == null ? "" : duty.strip());
    words.put("On forms", active != null && active ? "yes" : "no longer");
    return words;
  }
}
