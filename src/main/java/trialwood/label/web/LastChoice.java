package trialwood.label.web;

import jakarta.servlet.http.Cookie;
import jakarta.servlet.http.HttpServletRequest;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.http.ResponseCookie;
import org.springframework.web.util.WebUtils;

/**
 * What was chosen when labels were last printed from this device, kept by its browser: paper and
 * printer stand on the same table as the device.
 *
 * @param start the next free place of the sheet that was begun
 */
record LastChoice(String format, String printer, String start) {

  private static final String COOKIE = "labels";

  private static final String BREAK = "~";
  private static final Duration KEPT = Duration.ofDays(365);

  private static final LastChoice NONE = new LastChoice("", "", "1");

  /** What the browser kept; where it kept nothing, or something else, nothing is chosen yet. */
  static LastChoice of(HttpServletRequest request) {
    Cookie kept = WebUtils.getCookie(request, COOKIE);
    return kept == null ? NONE : read(kept.getValue());
  }

  private static LastChoice read(String kept) {
    try {
      List<String> parts =
          Stream.of(kept.split(BREAK, -1))
              .map(part -> URLDecoder.decode(part, StandardCharsets.UTF_8))
              .toList();
      return parts.size() == 3 ? new LastChoice(parts.get(0), parts.get(1), parts.get(2)) : NONE;
    } catch (IllegalArgumentException notOurs) {
      return NONE;
    }
  }

  ResponseCookie cookie() {
    String value =
        Stream.of(format, printer, start)
            .map(part -> URLEncoder.encode(part, StandardCharsets.UTF_8))
            .collect(Collectors.joining(BREAK));
    return ResponseCookie.from(COOKIE, value)
        .path("/labels")
        .httpOnly(true)
        .sameSite("Lax")
        .maxAge(KEPT)
        .build();
  }
}
