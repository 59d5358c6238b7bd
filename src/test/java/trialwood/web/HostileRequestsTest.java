package trialwood.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;

import jakarta.servlet.ServletException;
import java.lang.reflect.Parameter;
import java.lang.reflect.RecordComponent;
import java.net.URI;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.core.annotation.AnnotatedElementUtils;
import org.springframework.http.HttpMethod;
import org.springframework.http.server.PathContainer;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.context.ActiveProfiles;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.MockMvcRequestBuilders;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.method.HandlerMethod;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;
import org.springframework.web.util.pattern.PathPattern;
import org.springframework.web.util.pattern.PathPatternParser;
import trialwood.people.Role;
import trialwood.testing.Someone;

/**
 * What no page sends, sent to every route there is, in a nursery with records. Each route tells by
 * its own signature which parameters it reads, and the pages' own links where it is found, so that
 * a new one joins by itself. Nothing may come out as a fault of ours.
 */
@SpringBootTest(
    properties = {
      "spring.datasource.url=jdbc:h2:mem:${random.uuid};MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;"
          + "DEFAULT_NULL_ORDERING=HIGH;OPTIMIZE_REUSE_RESULTS=FALSE;DB_CLOSE_DELAY=-1",
      // a page that keeps its connection is found at once
      "spring.datasource.hikari.connection-timeout=1000",
      "logging.level.root=error"
    })
@AutoConfigureMockMvc
@ActiveProfiles({"test", "demo"})
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class HostileRequestsTest {

  /** Nothing is kept under it. */
  private static final String NO_ID = "00000000-0000-7000-8000-000000000000";

  private static final PathPatternParser PARSER = new PathPatternParser();
  private static final Pattern LINK = Pattern.compile("(?:href|action)=\"(/[^\"]*)\"");

  private static final List<String> HOSTILE =
      List.of(
          "",
          "   ",
          "\u0000",
          "a\u0007b\u001b[31m",
          "\r\nSet-Cookie: a=b",
          "-1",
          "-2147483649",
          "2147483648",
          "99999999999999999999999999",
          "1e400",
          "-1E-400",
          "1e2147483647",
          "NaN",
          "Infinity",
          "0x10",
          "1,5",
          "3/4/2025",
          "9999-12-31",
          "+999999999-12-31",
          "-0001-01-01",
          "00000000-0000-0000-0000-000000000000",
          "00000000-0000-0000-0000-00000000000g",
          "not-an-id",
          "\ud83c\udf3f\ud83c\udffd\u200d\ud83d\udd2c",
          "\ud83c",
          "\u202eC18-03\u202c",
          "\ufffe\uffff",
          "' or 1=1 --",
          "%",
          "_",
          "\\",
          "[",
          "<script>alert(1)</script>",
          "${7*7}",
          "__${7*7}__",
          "=1+1",
          "../../etc/passwd",
          "x".repeat(5000));

  private static final List<String> ODD_NAMES =
      List.of(
          "class.classLoader.x",
          "rows[99999999]",
          "rows[-1].plot",
          "rows[x].values[0]",
          "[",
          "]]",
          "form.form",
          "a.b.c[0].d",
          "_method");

  @Autowired
  @Qualifier("requestMappingHandlerMapping")
  RequestMappingHandlerMapping mapping;

  @Autowired MockMvc browser;

  private final List<String> faults = new ArrayList<>();
  private final Map<String, String> found = new HashMap<>();

  /** Walks from link to link, as the administrator and as the breeder. */
  @BeforeAll
  void find_a_real_address_for_every_route() throws Exception {
    Set<String> seen = new HashSet<>(Set.of("/"));
    Deque<String> open = new ArrayDeque<>(seen);
    List<PathPattern> patterns =
        routes().stream().map(Route::pattern).distinct().map(PARSER::parse).toList();
    while (!open.isEmpty()) {
      String address = open.remove();
      for (Role role : List.of(Role.ADMINISTRATOR, Role.BREEDER)) {
        String page =
            browser
                .perform(MockMvcRequestBuilders.get(URI.create(address)).with(Someone.as(role)))
                .andReturn()
                .getResponse()
                .getContentAsString();
        Matcher link = LINK.matcher(page);
        while (link.find()) {
          String path = link.group(1).replaceAll("[?#].*", "");
          PathContainer parsed = PathContainer.parsePath(path);
          patterns.stream()
              .filter(pattern -> pattern.matches(parsed))
              .min(PathPattern.SPECIFICITY_COMPARATOR)
              .filter(pattern -> found.putIfAbsent(pattern.getPatternString(), path) == null)
              .filter(pattern -> seen.add(path))
              .ifPresent(pattern -> open.add(path));
        }
      }
    }
  }

  @Test
  void most_routes_are_found_by_the_links_of_the_pages() {
    List<String> unseen =
        routes().stream()
            .map(Route::pattern)
            .distinct()
            .filter(p -> !found.containsKey(p))
            .toList();
    assertThat(unseen).as("found: %s", found).hasSizeLessThan(found.size() / 4);
  }

  /** In each turn every parameter gets another of the values; in the end each has had them all. */
  @Test
  void no_route_fails_on_hostile_values() {
    for (Route route : routes()) {
      List<String> names = route.parameters();
      for (int turn = 0; turn < HOSTILE.size() && !names.isEmpty(); turn++) {
        MockHttpServletRequestBuilder request = real(route);
        for (int nth = 0; nth < names.size(); nth++) {
          String value = HOSTILE.get((turn + nth) % HOSTILE.size());
          request.param(
              names.get(nth), turn % 5 == 0 ? new String[] {value, value} : new String[] {value});
        }
        send(route, " from " + shown(HOSTILE.get(turn)), request);
      }
    }
    assertThat(faults).isEmpty();
  }

  @Test
  void no_route_fails_on_hostile_addresses() {
    for (Route route : routes()) {
      if (route.pattern().contains("{")) {
        HOSTILE.forEach(value -> send(route, " at " + shown(value), route.at(value)));
      }
    }
    assertThat(faults).isEmpty();
  }

  @Test
  void no_route_fails_on_names_and_bodies_that_nobody_asked_for() {
    for (Route route : routes()) {
      send(route, " bare", real(route));
      MockHttpServletRequestBuilder odd = real(route);
      ODD_NAMES.forEach(name -> odd.param(name, "1"));
      send(route, " odd names", odd);
      for (String index : List.of("[0]", "[99999999]", "[-1]", "[x]", ".x", "['\u0000']")) {
        MockHttpServletRequestBuilder indexed = real(route);
        route.parameters().forEach(name -> indexed.param(name + index, "1"));
        send(route, " index " + index, indexed);
      }
      for (String type :
          List.of(
              "application/json",
              "text/plain",
              "multipart/form-data",
              "multipart/form-data; boundary=",
              "application/x-www-form-urlencoded; charset=nonsense",
              "nonsense",
              "*/*")) {
        send(
            route,
            " as " + type,
            real(route)
                .header("Content-Type", type)
                .content("{\"a\":%c3%28".getBytes(StandardCharsets.UTF_8)));
      }
      for (String accept : List.of("image/png", "application/json", "nonsense", "")) {
        send(route, " accepts " + accept, real(route).header("Accept", accept));
      }
      send(
          route,
          " broken UTF-8",
          real(route)
              .header("Content-Type", "application/x-www-form-urlencoded")
              .content(new byte[] {'f', 'o', 'r', 'm', '=', (byte) 0xc3, '(', '&', '%', 'z', 'z'}));
    }
    assertThat(faults).isEmpty();
  }

  private void send(Route route, String how, MockHttpServletRequestBuilder request) {
    try {
      MockHttpServletResponse answer =
          browser
              .perform(request.with(Someone.as(route.role())).with(csrf()))
              .andReturn()
              .getResponse();
      if (answer.getStatus() >= 500) {
        faults.add(route + how + " → " + answer.getStatus());
      }
    } catch (Exception fault) {
      Throwable cause = fault instanceof ServletException ? fault.getCause() : fault;
      faults.add(route + how + " → " + cause);
    }
  }

  private MockHttpServletRequestBuilder real(Route route) {
    return found.containsKey(route.pattern())
        ? MockMvcRequestBuilders.request(
            HttpMethod.valueOf(route.verb()), URI.create(found.get(route.pattern())))
        : route.at(NO_ID);
  }

  private static String shown(String value) {
    String plain = value.replaceAll("[^ -~]", "?");
    return "“" + (plain.length() > 40 ? plain.substring(0, 40) : plain) + "”";
  }

  private List<Route> routes() {
    return mapping.getHandlerMethods().entrySet().stream()
        .filter(entry -> entry.getValue().getBeanType().getName().startsWith("trialwood"))
        .flatMap(
            entry ->
                entry.getKey().getPatternValues().stream()
                    .flatMap(
                        pattern ->
                            entry.getKey().getMethodsCondition().getMethods().stream()
                                .map(verb -> new Route(verb.name(), pattern, entry.getValue()))))
        .toList();
  }

  private record Route(String verb, String pattern, HandlerMethod method) {

    MockHttpServletRequestBuilder at(String value) {
      String coded = URLEncoder.encode(value, StandardCharsets.UTF_8).replace("+", "%20");
      String address = pattern.replaceAll("\\{\\*?[^}]*}", coded.replace("\\", "\\\\"));
      return MockMvcRequestBuilders.request(HttpMethod.valueOf(verb), URI.create(address));
    }

    /** Names the method reads: its query parameters, and the components of its form. */
    List<String> parameters() {
      TreeSet<String> names = new TreeSet<>();
      for (Parameter parameter : method.getMethod().getParameters()) {
        RequestParam asked =
            AnnotatedElementUtils.findMergedAnnotation(parameter, RequestParam.class);
        if (asked != null) {
          names.add(asked.name().isEmpty() ? parameter.getName() : asked.name());
        } else if (parameter.getType().isRecord()
            && parameter.getType().getName().startsWith("trialwood")) {
          Arrays.stream(parameter.getType().getRecordComponents())
              .map(RecordComponent::getName)
              .forEach(names::add);
        }
      }
      return List.copyOf(names);
    }

    /** The administrator where he may, otherwise somebody who may. */
    Role role() {
      List<Role> allowed =
          Doors.allowed(method).map(door -> List.of(door.value())).orElse(List.of());
      return allowed.isEmpty() || allowed.contains(Role.ADMINISTRATOR)
          ? Role.ADMINISTRATOR
          : allowed.get(0);
    }

    @Override
    public String toString() {
      return verb + " " + pattern;
    }
  }
}
