package trialwood.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpSession;
import java.io.Serializable;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpMethod;
import org.springframework.http.MediaType;
import org.springframework.util.StringUtils;
import org.springframework.web.cors.CorsUtils;

/**
 * A form that arrived after its session had ended, kept in the next one until somebody signs in.
 * Only what was typed into one of our own pages is kept, and never a file or a password.
 *
 * @param address where it was sent to, within the application
 */
record KeptForm(String address, List<Box> boxes) implements Serializable {

  private static final String KEY = KeptForm.class.getName();

  /** More than any form of ours holds. */
  private static final int MOST_LETTERS = 100_000;

  /** One box and what it held. */
  record Box(String name, String text) implements Serializable {}

  /** What the request brought, if it is to be kept. */
  static Optional<KeptForm> of(HttpServletRequest request) {
    List<Box> boxes =
        request.getParameterMap().entrySet().stream()
            .filter(box -> isTyped(box.getKey()))
            .flatMap(box -> boxes(box.getKey(), box.getValue()))
            .toList();
    int letters = boxes.stream().mapToInt(box -> box.name().length() + box.text().length()).sum();
    return isOurs(request) && letters <= MOST_LETTERS
        ? Optional.of(new KeptForm(address(request), boxes))
        : Optional.empty();
  }

  static @Nullable KeptForm in(@Nullable HttpSession session) {
    return session == null ? null : (KeptForm) session.getAttribute(KEY);
  }

  void keepIn(HttpSession session) {
    session.setAttribute(KEY, this);
  }

  private static boolean isTyped(String name) {
    return !name.equals("_csrf") && !name.toLowerCase(Locale.ROOT).contains("password");
  }

  private static Stream<Box> boxes(String name, String[] texts) {
    return Arrays.stream(texts).map(text -> new Box(name, text));
  }

  /** Browsers name the page's origin with every form; a strange page's form is not kept. */
  private static boolean isOurs(HttpServletRequest request) {
    return HttpMethod.POST.matches(request.getMethod())
        && StringUtils.startsWithIgnoreCase(
            request.getContentType(), MediaType.APPLICATION_FORM_URLENCODED_VALUE)
        && request.getHeader("Origin") != null
        && !CorsUtils.isCorsRequest(request)
        && !address(request).startsWith("/sign-");
  }

  private static String address(HttpServletRequest request) {
    return request.getRequestURI().substring(request.getContextPath().length());
  }
}
