package trialwood.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.security.authentication.AuthenticationServiceException;
import org.springframework.security.authentication.LockedException;
import org.springframework.security.core.AuthenticationException;
import org.springframework.security.web.WebAttributes;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestAttribute;
import org.springframework.web.bind.annotation.RequestParam;

/** Where people sign in. The filter reads the form; a failed try is handed on to this page. */
@Controller
@ForEveryone
class SignInPage {

  @GetMapping("/sign-in")
  String show(@RequestParam @Nullable String out, HttpServletRequest request, Model page) {
    if (out != null) {
      page.addAttribute("status", "You are signed out.");
    } else if (KeptForm.in(request.getSession(false)) != null) {
      page.addAttribute("status", "You had been signed out. Your form is kept: sign in to go on.");
    }
    return "sign-in";
  }

  @PostMapping("/sign-in/failed")
  String failed(
      @RequestParam(defaultValue = "") String username,
      @RequestAttribute(name = WebAttributes.AUTHENTICATION_EXCEPTION, required = false)
          @Nullable AuthenticationException reason,
      HttpServletResponse answer,
      Model page) {
    answer.setStatus(status(reason).value());
    page.addAttribute("username", username);
    page.addAttribute("wrong", sentence(reason));
    return "sign-in";
  }

  private static HttpStatus status(@Nullable AuthenticationException reason) {
    if (reason instanceof AuthenticationServiceException) {
      return HttpStatus.SERVICE_UNAVAILABLE;
    }
    return reason instanceof LockedException
        ? HttpStatus.TOO_MANY_REQUESTS
        : HttpStatus.UNAUTHORIZED;
  }

  private static String sentence(@Nullable AuthenticationException reason) {
    if (reason instanceof AuthenticationServiceException) {
      return "The records cannot be reached just now. Try again in a minute.";
    }
    return reason instanceof LockedException
        ? "Too many tries for this name. Wait a quarter of an hour, then try once more."
        : "Name and password do not belong together. Check both and try again.";
  }
}
