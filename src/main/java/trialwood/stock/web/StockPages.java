package trialwood.stock.web;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import trialwood.stock.StockBook;
import trialwood.stock.StockBook.Standing;
import trialwood.web.ForStaff;

/** All stock plants with what could cost a clone, and one of them with its tests and cuttings. */
@Controller
class StockPages {

  private final StockBook book;
  private final StockForms forms;

  StockPages(StockBook book, StockForms forms) {
    this.book = book;
    this.forms = forms;
  }

  @GetMapping("/stock")
  @ForStaff
  String list(Model model) {
    List<Standing> plants = book.all(forms.today());
    Map<String, List<String>> warnings =
        plants.stream()
            .collect(
                Collectors.groupingBy(
                    Standing::code,
                    TreeMap::new,
                    Collectors.collectingAndThen(Collectors.toList(), StockBook::warnings)));
    warnings.values().removeIf(List::isEmpty);
    model.addAttribute("plants", plants);
    model.addAttribute("warnings", warnings);
    return "stock/plants";
  }

  @GetMapping("/stock/{label}")
  @ForStaff
  String plant(@PathVariable String label, Model model) {
    Standing plant = forms.plant(label);
    model.addAttribute("plant", plant);
    model.addAttribute("happened", book.happened(plant.stockId()));
    model.addAttribute("taken", book.taken(plant.stockId()));
    model.addAttribute("warnings", StockBook.warnings(book.of(plant.accessionId(), forms.today())));
    return "stock/plant";
  }
}
