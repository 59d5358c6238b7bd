package trialwood.web;

import org.jspecify.annotations.Nullable;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.security.web.csrf.CsrfToken;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ResponseBody;
import trialwood.people.SignedIn;

/**
 * What a device needs in order to send later what is typed now. Both pages are the same for
 * everybody and hold no record: the device keeps them, and fills the first from its own store.
 */
@Controller
@ForEveryone
class OutboxPages {

  /**
   * Who would send now, and the token to send with.
   *
   * @param account null when nobody is signed in; then there is no token either
   */
  record Sender(@Nullable String account, @Nullable String initials, @Nullable String token) {}

  @GetMapping("/outbox")
  String outbox(Model page) {
    page.asMap().remove("viewer");
    return "outbox";
  }

  @GetMapping("/no-signal")
  String noSignal(Model page) {
    page.asMap().remove("viewer");
    return "no-signal";
  }

  @GetMapping("/outbox/token")
  @ResponseBody
  Sender sender(@AuthenticationPrincipal @Nullable SignedIn account, CsrfToken token) {
    return account == null
        ? new Sender(null, null, null)
        : new Sender(account.getUsername(), account.initials(), token.getToken());
  }
}
