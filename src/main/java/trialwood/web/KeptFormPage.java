package trialwood.web;

import jakarta.servlet.http.HttpServletRequest;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;

/**
 * Hands a form that came too late back to whoever signed in. Its button sends it to where it was
 * going, marked so that {@link Forms} shows it again and stores nothing.
 */
@Controller
@ForSignedIn
class KeptFormPage {

  static final String ADDRESS = "/kept-form";

  @GetMapping(ADDRESS)
  String show(HttpServletRequest request, Model page) {
    @Nullable KeptForm kept = KeptForm.in(request.getSession(false));
    page.addAttribute("kept", kept);
    page.addAttribute("mark", Forms.LOOK_AGAIN);
    return kept == null ? "redirect:/" : "kept-form";
  }
}
