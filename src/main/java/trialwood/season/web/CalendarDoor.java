package trialwood.season.web;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import org.jspecify.annotations.Nullable;
import org.springframework.http.CacheControl;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.util.DigestUtils;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.context.request.ServletWebRequest;
import org.springframework.web.servlet.support.ServletUriComponentsBuilder;
import trialwood.people.Role;
import trialwood.people.Secret;
import trialwood.season.CalendarFeeds;
import trialwood.season.FeedThrottle;
import trialwood.season.Season;
import trialwood.web.ForEveryone;
import trialwood.web.NotFound;

/** The calendar that other programs fetch: whoever knows the secret needs no sign-in. */
@Controller
class CalendarDoor {

  private static final MediaType CALENDAR =
      new MediaType("text", "calendar", StandardCharsets.UTF_8);

  private final CalendarFeeds feeds;
  private final FeedThrottle throttle;
  private final Season season;

  CalendarDoor(CalendarFeeds feeds, FeedThrottle throttle, Season season) {
    this.feeds = feeds;
    this.throttle = throttle;
    this.season = season;
  }

  @GetMapping("/calendar/{secret}.ics")
  @ForEveryone
  @Nullable ResponseEntity<byte[]> fetch(
      @PathVariable("secret") String text, ServletWebRequest asked) {
    Secret secret = new Secret(text);
    Role role =
        feeds
            .roleBehind(secret)
            .filter(one -> one != Role.COOPERATOR)
            .orElseThrow(NotFound.of("such calendar"));
    if (!throttle.admits(secret)) {
      return ResponseEntity.status(HttpStatus.TOO_MANY_REQUESTS)
          .header("Retry-After", String.valueOf(FeedThrottle.WITHIN.toSeconds()))
          .build();
    }
    String root = ServletUriComponentsBuilder.fromCurrentContextPath().toUriString();
    byte[] calendar = season.calendar(role, root).getBytes(StandardCharsets.UTF_8);
    String tag = "\"" + DigestUtils.md5DigestAsHex(calendar) + "\"";
    if (asked.checkNotModified(tag)) {
      return null;
    }
    return ResponseEntity.ok()
        .contentType(CALENDAR)
        .cacheControl(CacheControl.maxAge(Duration.ofMinutes(15)).cachePrivate().mustRevalidate())
        .eTag(tag)
        .body(calendar);
  }
}
