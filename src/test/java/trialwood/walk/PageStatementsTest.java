package trialwood.walk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;
import org.springframework.test.annotation.DirtiesContext;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import trialwood.people.Role;
import trialwood.testing.ApplicationTest;
import trialwood.testing.Someone;
import trialwood.testing.Statements;

/** A page asks the database as often for twenty rows as for one. */
@ApplicationTest
@DirtiesContext
@Import({SecondNursery.class, Statements.class})
class PageStatementsTest {

  private static final List<String> PAGES =
      List.of(
          "/",
          "/?days=90",
          "/today/worksheet",
          "/candidates",
          "/gates/field",
          "/gates/propagation",
          "/bench/runs/MIST-9",
          "/bench/runs/MIST-9/batches/new",
          "/bench/runs/MIST-9/plan",
          "/bench/map",
          "/labels/runs/MIST-9",
          "/bench/round",
          "/containers",
          "/containers/L-ALL",
          "/containers/L-ALL/measure",
          "/stock",
          "/bench/trays/M9-N2-1/look?round=on",
          "/bench/trays/M9-N2-1/final-count?round=on");

  @Autowired private MockMvcTester mvc;
  @Autowired private SecondNursery nursery;
  @Autowired private Statements statements;

  @Test
  void twenty_rows_cost_no_more_statements_than_one() throws Exception {
    nursery.moveIn();
    nursery.take("container-classes", "class,lowest_litres,highest_litres,remark\n#9,2.0,4.0,\n");
    nursery.take(
        "lots",
        "lot,accession,class,litres,on,number,yard,by,note\nL-ALL,MOTHER-7,#9,2.8,{today-90},40,,PF,\n");
    add(1, 2);
    PAGES.forEach(this::ask);
    Map<String, Integer> few = new LinkedHashMap<>();
    PAGES.forEach(page -> few.put(page, ask(page)));

    add(3, 22);
    PAGES.forEach(page -> assertThat(ask(page)).as(page).isPositive().isEqualTo(few.get(page)));
  }

  private int ask(String page) {
    return statements.of(
        () ->
            assertThat(mvc.get().uri(page).with(Someone.as(Role.BREEDER)).exchange())
                .as(page)
                .hasStatusOk());
  }

  /** Odd ones wait at the field gate, even ones stand on the bench and wait at the next. */
  private void add(int first, int last) {
    nursery.take(
        "field-tags",
        "accession,population,row,position,on,by,seen,talk_name,seed_parent,description,outstanding\n"
            + lines(
                first, last, n -> "N-%d,SB3,1,%d,{today-400},OB,Upright,,,,no".formatted(n, n)));
    nursery.take(
        "decisions",
        "accession,gate,on,choice,hold_until,reason,by\n"
            + even(first, last, n -> "N-%d,field,{today-60},advance,,Upright.,OB".formatted(n)));
    nursery.take(
        "batches",
        "batch,run,source,wounding,hormone,form,ppm,note\n"
            + even(first, last, n -> "M9-N%d,MIST-9,ortet,,,,,".formatted(n)));
    nursery.take(
        "trays",
        "tray,batch,accession,cells,stuck_on,stuck,block,place,by\n"
            + even(
                first, last, n -> "M9-N%d-1,M9-N%d,N-%d,24,{today-28},24,,,PF".formatted(n, n, n)));
    addToTheYard(first, last);
  }

  /** Plants with a number, a lot and a stock plant each. */
  private void addToTheYard(int first, int last) {
    nursery.take(
        "plants",
        "plant,lot,number,from\n"
            + lines(first, last, n -> "L-ALL-%d,L-ALL,%d,{today-80}".formatted(n, n)));
    nursery.take(
        "lots",
        "lot,accession,class,litres,on,number,yard,by,note\n"
            + lines(first, last, n -> "L-%d,N-%d,#9,2.8,{today-60},12,,PF,".formatted(n, n)));
    nursery.take(
        "stock-plants",
        "plant,accession,number,since,place,batch,source_unit,note,by\n"
            + lines(first, last, n -> "S-%d,N-%d,1,{today-30},hedge,,,,PF".formatted(n, n)));
  }

  private static String lines(int first, int last, IntFunction<String> line) {
    return IntStream.rangeClosed(first, last).mapToObj(line).collect(Collectors.joining("\n"));
  }

  private static String even(int first, int last, IntFunction<String> line) {
    return IntStream.rangeClosed(first, last)
        .filter(n -> n % 2 == 0)
        .mapToObj(line)
        .collect(Collectors.joining("\n"));
  }
}
