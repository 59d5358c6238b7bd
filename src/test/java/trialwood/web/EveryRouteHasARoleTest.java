package trialwood.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.http.HttpMethod;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.MockMvcRequestBuilders;
import org.springframework.web.method.HandlerMethod;
import org.springframework.web.servlet.mvc.method.RequestMappingInfo;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;
import trialwood.people.Role;
import trialwood.testing.ApplicationTest;
import trialwood.testing.Someone;

@ApplicationTest
class EveryRouteHasARoleTest {

  /** Nothing is kept under it; whoever is let in hears "not found" or "cannot be read". */
  private static final String NO_ID = "00000000-0000-7000-8000-000000000000";

  @Autowired
  @Qualifier("requestMappingHandlerMapping")
  RequestMappingHandlerMapping mapping;

  @Autowired MockMvc browser;

  @Test
  void every_page_says_who_may_open_it() {
    assertThat(routes())
        .isNotEmpty()
        .allSatisfy(
            route -> assertThat(Doors.allowed(route.method())).as(route.toString()).isPresent());
  }

  @Test
  void every_role_reaches_what_it_is_allowed_and_nothing_else() throws Exception {
    for (Route route : routes()) {
      Allowed allowed = Doors.allowed(route.method()).orElseThrow();
      for (Role role : Role.values()) {
        int status =
            browser
                .perform(route.request().with(Someone.as(role)))
                .andReturn()
                .getResponse()
                .getStatus();
        if (allowed.anonymous() || Arrays.asList(allowed.value()).contains(role)) {
          assertThat(status).as("%s as %s", route, role).isNotEqualTo(403).isLessThan(500);
        } else {
          assertThat(status).as("%s as %s", route, role).isEqualTo(403);
        }
      }
    }
  }

  @Test
  void who_is_not_signed_in_is_sent_to_sign_in() throws Exception {
    for (Route route : routes()) {
      MockHttpServletResponse answer = browser.perform(route.request()).andReturn().getResponse();
      if (Doors.isOpen(route.method(), Optional.empty())) {
        assertThat(answer.getStatus()).as(route.toString()).isLessThan(500);
      } else {
        assertThat(answer.getRedirectedUrl()).as(route.toString()).endsWith("/sign-in");
      }
    }
  }

  @Test
  void an_address_that_nobody_serves_tells_a_stranger_nothing() throws Exception {
    MockHttpServletResponse answer =
        browser.perform(MockMvcRequestBuilders.get("/no/such/page")).andReturn().getResponse();
    assertThat(answer.getRedirectedUrl()).endsWith("/sign-in");
  }

  private List<Route> routes() {
    return mapping.getHandlerMethods().entrySet().stream()
        .filter(entry -> entry.getValue().getBeanType().getName().startsWith("trialwood"))
        .flatMap(EveryRouteHasARoleTest::routesOf)
        .toList();
  }

  private static Stream<Route> routesOf(Map.Entry<RequestMappingInfo, HandlerMethod> entry) {
    List<String> methods =
        entry.getKey().getMethodsCondition().getMethods().stream().map(Enum::name).toList();
    return entry.getKey().getPatternValues().stream()
        .flatMap(
            pattern ->
                (methods.isEmpty() ? List.of("GET") : methods)
                    .stream().map(verb -> new Route(verb, pattern, entry.getValue())));
  }

  private record Route(String verb, String pattern, HandlerMethod method) {

    MockHttpServletRequestBuilder request() {
      String address = pattern.replaceAll("\\{\\*?[^}]*}", NO_ID);
      return MockMvcRequestBuilders.request(HttpMethod.valueOf(verb), address).with(csrf());
    }

    @Override
    public String toString() {
      return verb + " " + pattern;
    }
  }
}
