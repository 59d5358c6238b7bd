package trialwood.exchange;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;

/** All sheets, in the order in which they are loaded. */
@Component
public class Sheets {

  private final List<Sheet> all;

  Sheets(List<Sheet> all) {
    this.all = all.stream().sorted(Comparator.comparingInt(Sheet::place)).toList();
  }

  public List<Sheet> all() {
    return all;
  }

  public Optional<Sheet> named(String name) {
    return all.stream().filter(sheet -> sheet.name().equals(name)).findFirst();
  }
}
