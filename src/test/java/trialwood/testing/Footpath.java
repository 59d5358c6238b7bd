package trialwood.testing;

import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

import java.net.URI;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.boot.test.context.TestComponent;
import org.springframework.http.server.PathContainer;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;
import org.springframework.web.util.pattern.PathPattern;
import org.springframework.web.util.pattern.PathPatternParser;
import trialwood.people.Role;

/** Walks from the first page along the links, and takes the first address found of every route. */
@TestComponent
public class Footpath {

  private static final Pattern LINK = Pattern.compile("(href|action)=\"(/[^\"?#]*)");

  private final MockMvc browser;
  private final RequestMappingHandlerMapping mapping;

  Footpath(
      MockMvc browser,
      @Qualifier("requestMappingHandlerMapping") RequestMappingHandlerMapping mapping) {
    this.browser = browser;
    this.mapping = mapping;
  }

  /**
   * @param addresses where each route was found, by its pattern; forms are found, not sent
   * @param answers the status of every page that was opened, by its address
   */
  public record Walk(Map<String, String> addresses, Map<String, Integer> answers) {}

  /** Opens one page of every route that the role finds by links. */
  public Walk as(Role role) throws Exception {
    Walk walk = new Walk(new LinkedHashMap<>(), new LinkedHashMap<>());
    Deque<String> ahead = new ArrayDeque<>();
    ahead.add("/");
    while (!ahead.isEmpty()) {
      String address = ahead.remove();
      MockHttpServletResponse page = open(address, role);
      walk.answers().put(address, page.getStatus());
      LINK.matcher(page.getContentAsString())
          .results()
          .filter(link -> isNew(link.group(2), walk))
          .filter(Footpath::isPage)
          .forEach(link -> ahead.add(link.group(2)));
    }
    return walk;
  }

  private MockHttpServletResponse open(String address, Role role) throws Exception {
    return browser
        .perform(get(URI.create(address)).with(Someone.as(role)))
        .andReturn()
        .getResponse();
  }

  private boolean isNew(String address, Walk walk) {
    PathContainer path = PathContainer.parsePath(address);
    return mapping.getHandlerMethods().keySet().stream()
        .flatMap(route -> route.getPatternValues().stream())
        .map(PathPatternParser.defaultInstance::parse)
        .filter(pattern -> pattern.matches(path))
        .min(PathPattern.SPECIFICITY_COMPARATOR)
        .filter(found -> walk.addresses().putIfAbsent(found.getPatternString(), address) == null)
        .isPresent();
  }

  private static boolean isPage(MatchResult link) {
    return link.group(1).equals("href");
  }
}
