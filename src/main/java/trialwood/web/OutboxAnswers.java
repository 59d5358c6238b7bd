package trialwood.web;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpServletResponseWrapper;
import java.io.IOException;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpMethod;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Answers a form that a device sends from its outbox in words a script can tell apart: 204 and the
 * next page's address when {@link Forms} has stored it, 422 and the page when it comes back with
 * what is wrong. Any other answer means that it is not stored; one without the header is not from
 * here at all.
 */
@Component
@Order(OutboxAnswers.BEFORE_SECURITY)
class OutboxAnswers extends OncePerRequestFilter {

  /** On the request: the edition of the page that was filled in. On the answer: that we saw it. */
  static final String HEADER = "X-Outbox";

  static final String NEXT = "X-Outbox-Next";
  static final int BEFORE_SECURITY = -101;

  static boolean sent(HttpServletRequest request) {
    return request.getHeader(HEADER) != null;
  }

  @Override
  protected boolean shouldNotFilter(HttpServletRequest request) {
    return !(sent(request) && HttpMethod.POST.matches(request.getMethod()));
  }

  @Override
  protected void doFilterInternal(
      HttpServletRequest request, HttpServletResponse response, FilterChain chain)
      throws ServletException, IOException {
    response.setHeader(HEADER, "seen");
    response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
    chain.doFilter(request, new Answer(request, response));
  }

  private static final class Answer extends HttpServletResponseWrapper {

    private final HttpServletRequest request;

    Answer(HttpServletRequest request, HttpServletResponse response) {
      super(response);
      this.request = request;
    }

    @Override
    public void sendRedirect(String location) throws IOException {
      if (request.getAttribute(Forms.STORED) == null) {
        super.sendRedirect(location);
        return;
      }
      setStatus(HttpStatus.NO_CONTENT.value());
      setHeader(NEXT, location);
    }
  }
}
