package trialwood.container.web;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import trialwood.crop.ContainerClasses;
import trialwood.web.CsvRows;
import trialwood.web.ForStaff;
import trialwood.web.ListQuery;
import trialwood.web.Place;

/** All lots, as a page and as a file with the same rows. */
@Controller
class ContainersPages {

  private static final List<String> HEAD =
      List.of(
          "lot",
          "accession",
          "class",
          "litres",
          "potted_on",
          "potted",
          "alive",
          "counted_on",
          "found",
          "saleable",
          "yard");

  private final LotList lots;
  private final ContainerClasses classes;

  ContainersPages(LotList lots, ContainerClasses classes) {
    this.lots = lots;
    this.classes = classes;
  }

  @GetMapping("/containers")
  @ForStaff
  @Place(key = "containers", label = "Containers", order = 40)
  String list(@RequestParam Map<String, String> parameters, Model model) {
    ListQuery query = ListQuery.of(parameters, "class", "season");
    model.addAttribute("query", query);
    model.addAttribute("rows", lots.page(query));
    model.addAttribute("total", lots.total(query));
    model.addAttribute("classes", classOptions());
    model.addAttribute("seasons", seasonOptions());
    return "container/containers";
  }

  @GetMapping(path = "/containers.csv", produces = "text/csv;charset=UTF-8")
  @ForStaff
  ResponseEntity<String> file(@RequestParam Map<String, String> parameters) {
    ListQuery query = ListQuery.of(parameters, "class", "season");
    return ResponseEntity.ok()
        .header(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"lots.csv\"")
        .body(CsvRows.of(HEAD, lots.all(query).stream().map(ContainersPages::cells).toList()));
  }

  private static List<@Nullable Object> cells(LotList.Row row) {
    return Arrays.asList(
        row.label(),
        row.accession(),
        row.containerClass(),
        row.litres(),
        row.pottedOn(),
        row.potted(),
        row.alive(),
        row.counted(),
        row.found(),
        row.saleable(),
        row.yard());
  }

  private Map<String, String> classOptions() {
    Map<String, String> options = new LinkedHashMap<>();
    classes.findAllByOrderByHighestLitres().forEach(it -> options.put(it.code(), it.code()));
    return options;
  }

  private Map<String, String> seasonOptions() {
    Map<String, String> options = new LinkedHashMap<>();
    lots.seasons().forEach(it -> options.put(Objects.toString(it), Objects.toString(it)));
    return options;
  }
}
