package trialwood.web;

import jakarta.servlet.http.HttpServletRequest;
import java.lang.reflect.AnnotatedElement;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.core.annotation.AnnotatedElementUtils;
import org.springframework.http.server.PathContainer;
import org.springframework.http.server.RequestPath;
import org.springframework.security.authorization.AuthorizationDecision;
import org.springframework.security.authorization.AuthorizationManager;
import org.springframework.security.authorization.AuthorizationResult;
import org.springframework.security.core.Authentication;
import org.springframework.security.web.access.intercept.RequestAuthorizationContext;
import org.springframework.stereotype.Component;
import org.springframework.web.bind.annotation.RequestMethod;
import org.springframework.web.method.HandlerMethod;
import org.springframework.web.servlet.HandlerExecutionChain;
import org.springframework.web.servlet.mvc.method.RequestMappingInfo;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;
import org.springframework.web.util.ServletRequestPathUtils;
import org.springframework.web.util.pattern.PathPattern;
import trialwood.people.Role;
import trialwood.people.SignedIn;

/**
 * Decides who may make a request by the {@link Allowed} of the controller method that would answer
 * it. No list of addresses is kept anywhere else, so none can be forgotten.
 */
@Component
public class Doors implements AuthorizationManager<RequestAuthorizationContext> {

  private final RequestMappingHandlerMapping mapping;

  Doors(@Qualifier("requestMappingHandlerMapping") RequestMappingHandlerMapping mapping) {
    this.mapping = mapping;
  }

  @Override
  public AuthorizationResult authorize(
      Supplier<? extends @Nullable Authentication> caller, RequestAuthorizationContext context) {
    Optional<Role> role = role(caller.get());
    // where no method answers, those who are signed in hear so; others first sign in
    return new AuthorizationDecision(
        answering(context.getRequest())
            .map(method -> isOpen(method, role))
            .orElse(role.isPresent()));
  }

  /**
   * Whether the role may open the page.
   *
   * @param href from the root of the application, with or without a query
   */
  public boolean opens(Role role, String href) {
    PathContainer path = PathContainer.parsePath(href.split("[?#]", 2)[0]);
    return mapping.getHandlerMethods().entrySet().stream()
        .filter(
            page -> page.getKey().getMethodsCondition().getMethods().contains(RequestMethod.GET))
        .flatMap(
            page -> patterns(page.getKey()).map(pattern -> Map.entry(pattern, page.getValue())))
        .filter(page -> page.getKey().matches(path))
        .min(Map.Entry.comparingByKey())
        .filter(page -> isOpen(page.getValue(), Optional.of(role)))
        .isPresent();
  }

  private static Stream<PathPattern> patterns(RequestMappingInfo page) {
    return Stream.ofNullable(page.getPathPatternsCondition())
        .flatMap(condition -> condition.getPatterns().stream());
  }

  /** The pages the navigation shows to a role, in their order. */
  List<Viewer.Link> places(Role role) {
    return mapping.getHandlerMethods().entrySet().stream()
        .filter(page -> page.getValue().hasMethodAnnotation(Place.class))
        .filter(page -> isOpen(page.getValue(), Optional.of(role)))
        .sorted(Comparator.comparingInt(page -> place(page).order()))
        .map(Doors::link)
        .toList();
  }

  /** Whether the role, or with none somebody who is not signed in, may call the method. */
  static boolean isOpen(HandlerMethod method, Optional<Role> role) {
    Optional<Allowed> allowed = allowed(method);
    return allowed.filter(Allowed::anonymous).isPresent()
        || role.isPresent()
            && allowed.filter(a -> Arrays.asList(a.value()).contains(role.get())).isPresent();
  }

  static Optional<Allowed> allowed(HandlerMethod method) {
    return allowed(method.getMethod()).or(() -> allowed(method.getBeanType()));
  }

  private static Optional<Allowed> allowed(AnnotatedElement element) {
    return Optional.ofNullable(AnnotatedElementUtils.findMergedAnnotation(element, Allowed.class));
  }

  private Optional<HandlerMethod> answering(HttpServletRequest request) {
    RequestPath path = (RequestPath) request.getAttribute(ServletRequestPathUtils.PATH_ATTRIBUTE);
    try {
      ServletRequestPathUtils.parseAndCache(request);
      return Optional.ofNullable(mapping.getHandler(request))
          .map(HandlerExecutionChain::getHandler)
          .map(HandlerMethod.class::cast);
    } catch (Exception noneTakesIt) {
      // a method, a content type or parameters that no page takes: the dispatcher says which
      return Optional.empty();
    } finally {
      ServletRequestPathUtils.setParsedRequestPath(path, request);
    }
  }

  private static Optional<Role> role(@Nullable Authentication caller) {
    return Optional.ofNullable(caller)
        .map(Authentication::getPrincipal)
        .filter(SignedIn.class::isInstance)
        .map(SignedIn.class::cast)
        .map(SignedIn::role);
  }

  private static Viewer.Link link(Map.Entry<RequestMappingInfo, HandlerMethod> page) {
    String address = page.getKey().getPatternValues().iterator().next();
    return new Viewer.Link(
        place(page).key(), address.isEmpty() ? "/" : address, place(page).label());
  }

  private static Place place(Map.Entry<RequestMappingInfo, HandlerMethod> page) {
    return Optional.ofNullable(page.getValue().getMethodAnnotation(Place.class)).orElseThrow();
  }
}
