package trialwood.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.request;

import java.lang.reflect.RecordComponent;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.context.annotation.Import;
import org.springframework.core.MethodParameter;
import org.springframework.http.HttpMethod;
import org.springframework.test.context.ActiveProfiles;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.method.HandlerMethod;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;
import org.springframework.web.util.UriUtils;
import trialwood.people.Role;
import trialwood.testing.ApplicationTest;
import trialwood.testing.Footpath;
import trialwood.testing.Someone;

/**
 * What no page of ours sends, sent to every route there is, in a nursery with records. A route
 * tells by its signature what it reads, so that a new one joins by itself. Whatever comes, the
 * fault is the sender's: never a status of 500 and above.
 */
@ApplicationTest
@ActiveProfiles({"test", "demo"})
@Import(Footpath.class)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class HostileRequestsTest {

  private static final String NO_ID = "00000000-0000-7000-8000-000000000000";

  private static final List<String> HOSTILE =
      List.of(
          "",
          " \t ",
          "\u0000",
          "a\u0007b\u001b[31m\r\nSet-Cookie: a=b",
          "-1",
          "2147483648",
          "99999999999999999999999999",
          "1e400",
          "1e2147483647",
          "NaN",
          "1,5",
          "3/4/2025",
          "+999999999-12-31",
          NO_ID,
          "00000000-0000-0000-0000-00000000000g",
          "\ud83c\udf3f\ud83c\udffd\u200d\ud83d\udd2c",
          "\ud83c",
          "\u202eC18-03\ufffe\uffff",
          "' or 1=1 -- %_\\[",
          "${7*7}__${7*7}__<script>",
          "../../etc/passwd",
          "x".repeat(5000));

  @Autowired MockMvc browser;

  @Autowired
  @Qualifier("requestMappingHandlerMapping")
  RequestMappingHandlerMapping mapping;

  private final Map<String, String> addresses = new HashMap<>();
  private final List<Route> routes = new ArrayList<>();

  @BeforeAll
  void every_route_and_where_its_link_leads(@Autowired Footpath footpath) throws Exception {
    for (Role role : List.of(Role.ADMINISTRATOR, Role.BREEDER)) {
      footpath.as(role).addresses().forEach(addresses::putIfAbsent);
    }
    mapping
        .getHandlerMethods()
        .forEach(
            (route, method) ->
                route
                    .getMethodsCondition()
                    .getMethods()
                    .forEach(
                        verb ->
                            route
                                .getPatternValues()
                                .forEach(at -> routes.add(new Route(verb.name(), at, method)))));
  }

  @Test
  void most_routes_are_tried_on_a_record_that_is_there() {
    assertThat(routes)
        .filteredOn(route -> addresses.containsKey(route.pattern()))
        .hasSizeGreaterThan(routes.size() * 3 / 4);
  }

  /** In each turn every box gets another value; in the end each box has had them all. */
  @Test
  void no_value_is_our_fault() {
    assertNoFault(
        route -> {
          List<String> boxes = route.boxes();
          return boxes.isEmpty() ? Stream.of() : HOSTILE.stream().map(first -> fill(route, first));
        });
  }

  @Test
  void no_address_is_our_fault() {
    assertNoFault(
        route ->
            route.pattern().contains("{")
                ? HOSTILE.stream().map(value -> route.at(route.with(value)))
                : Stream.of());
  }

  @ParameterizedTest
  @ValueSource(strings = {"[0]", "[99999999]", "[-1]", "[x].y", "[0].x", ".x", "['\u0000']", "]["})
  void no_name_is_our_fault(String behind) {
    assertNoFault(
        route -> {
          MockHttpServletRequestBuilder odd = real(route).param("class.classLoader", "1");
          route.boxes().forEach(box -> odd.param(box + behind, "1"));
          return route.verb().equals("POST") ? Stream.of(odd) : Stream.of();
        });
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "application/json",
        "multipart/form-data",
        "multipart/form-data; boundary=",
        "application/x-www-form-urlencoded",
        "application/x-www-form-urlencoded; charset=nonsense",
        "nonsense"
      })
  void no_body_is_our_fault(String type) {
    byte[] brokenUtf8 = "{\"form\":=\u00c3(&%zz".getBytes(StandardCharsets.ISO_8859_1);
    assertNoFault(
        route ->
            route.verb().equals("POST")
                ? Stream.of(real(route).header("Content-Type", type).content(brokenUtf8))
                : Stream.of());
  }

  @Test
  void no_wish_for_another_kind_of_answer_is_our_fault() {
    assertNoFault(route -> Stream.of(real(route).header("Accept", "image/png")));
  }

  private void assertNoFault(Attack attack) {
    List<String> faults = new ArrayList<>();
    for (Route route : routes) {
      int turn = 0;
      for (MockHttpServletRequestBuilder sent : attack.on(route).toList()) {
        String answer = answer(sent.with(Someone.as(route.role())).with(csrf()));
        if (!answer.matches("[1-4]..")) {
          faults.add("%s %s, turn %d: %s".formatted(route.verb(), route.pattern(), turn, answer));
        }
        turn++;
      }
    }
    assertThat(faults).isEmpty();
  }

  private String answer(MockHttpServletRequestBuilder sent) {
    try {
      return String.valueOf(browser.perform(sent).andReturn().getResponse().getStatus());
    } catch (Exception fault) {
      return String.valueOf(fault);
    }
  }

  /** Every third turn each box comes twice. */
  private MockHttpServletRequestBuilder fill(Route route, String first) {
    MockHttpServletRequestBuilder filled = real(route);
    int turn = HOSTILE.indexOf(first);
    List<String> boxes = route.boxes();
    for (int nth = 0; nth < boxes.size(); nth++) {
      String value = HOSTILE.get((turn + nth) % HOSTILE.size());
      filled.param(
          boxes.get(nth), turn % 3 == 0 ? new String[] {value, "1"} : new String[] {value});
    }
    return filled;
  }

  private MockHttpServletRequestBuilder real(Route route) {
    return route.at(addresses.getOrDefault(route.pattern(), route.with(NO_ID)));
  }

  private interface Attack {
    Stream<MockHttpServletRequestBuilder> on(Route route);
  }

  private record Route(String verb, String pattern, HandlerMethod method) {

    MockHttpServletRequestBuilder at(String address) {
      return request(HttpMethod.valueOf(verb), URI.create(address));
    }

    /** Its address with the value in every gap. */
    String with(String value) {
      return Arrays.stream(pattern.split("\\{[^}]*}", -1))
          .reduce((left, right) -> left + UriUtils.encode(value, StandardCharsets.UTF_8) + right)
          .orElseThrow();
    }

    /** What it reads: parameters, and the components of its form. */
    List<String> boxes() {
      return Arrays.stream(method.getMethodParameters())
          .map(read -> read.withContainingClass(method.getBeanType()))
          .flatMap(Route::boxes)
          .toList();
    }

    private static Stream<String> boxes(MethodParameter read) {
      if (read.hasParameterAnnotation(RequestParam.class)) {
        return Stream.of(read.getParameter().getName());
      }
      return Form.class.isAssignableFrom(read.getParameterType())
          ? Arrays.stream(read.getParameterType().getRecordComponents())
              .map(RecordComponent::getName)
          : Stream.of();
    }

    /** The administrator where he may, otherwise somebody who may. */
    Role role() {
      return Stream.concat(Stream.of(Role.ADMINISTRATOR), Arrays.stream(Role.values()))
          .filter(role -> Doors.isOpen(method, Optional.of(role)))
          .findFirst()
          .orElse(Role.ADMINISTRATOR);
    }
  }
}
