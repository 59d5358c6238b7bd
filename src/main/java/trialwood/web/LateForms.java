package trialwood.web;

import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Optional;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.web.access.AccessDeniedHandler;
import org.springframework.security.web.access.AccessDeniedHandlerImpl;
import org.springframework.security.web.csrf.CsrfException;
import org.springframework.stereotype.Component;

/**
 * Keeps a form whose token ended with its session and leads to {@link KeptFormPage}, by way of the
 * sign-in page if need be; refuses everything else. What a device's outbox sends it keeps itself.
 */
@Component
class LateForms implements AccessDeniedHandler {

  private final AccessDeniedHandler refusal = new AccessDeniedHandlerImpl();

  @Override
  public void handle(
      HttpServletRequest request, HttpServletResponse answer, AccessDeniedException denied)
      throws IOException, ServletException {
    Optional<KeptForm> form =
        denied instanceof CsrfException && !OutboxAnswers.sent(request)
            ? KeptForm.of(request)
            : Optional.empty();
    if (form.isEmpty()) {
      refusal.handle(request, answer, denied);
      return;
    }
    form.get().keepIn(request.getSession());
    answer.sendRedirect(request.getContextPath() + KeptFormPage.ADDRESS);
  }
}
