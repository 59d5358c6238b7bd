package trialwood.web;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.http.HttpStatus;
import org.springframework.security.web.firewall.RequestRejectedException;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.method.annotation.MethodArgumentTypeMismatchException;
import org.springframework.web.multipart.MaxUploadSizeExceededException;
import org.springframework.web.multipart.MultipartException;
import trialwood.record.Refused;

/** Gives what somebody sent and nobody can do its status; the pages are in templates/error. */
@ControllerAdvice
class Failures {

  private static final Logger log = LoggerFactory.getLogger(Failures.class);

  /** An id in an address that is no id names nothing. */
  @ExceptionHandler(MethodArgumentTypeMismatchException.class)
  void namesNothing(MethodArgumentTypeMismatchException unreadable, HttpServletResponse answer)
      throws IOException {
    boolean inQuery = unreadable.getParameter().hasParameterAnnotation(RequestParam.class);
    send(answer, inQuery ? HttpStatus.BAD_REQUEST : HttpStatus.NOT_FOUND);
  }

  @ExceptionHandler({OptimisticLockingFailureException.class, DuplicateKeyException.class})
  void somebodyWasFaster(HttpServletResponse answer) throws IOException {
    send(answer, HttpStatus.CONFLICT);
  }

  @ExceptionHandler({MultipartException.class, RequestRejectedException.class, Refused.class})
  void unreadable(HttpServletResponse answer) throws IOException {
    send(answer, HttpStatus.BAD_REQUEST);
  }

  @ExceptionHandler(MaxUploadSizeExceededException.class)
  void tooLarge(HttpServletResponse answer) throws IOException {
    send(answer, HttpStatus.CONTENT_TOO_LARGE);
  }

  /** The database refused what no form had caught; the log says which rule it was. */
  @ExceptionHandler(DataIntegrityViolationException.class)
  void refusedByTheDatabase(DataIntegrityViolationException refusal, HttpServletResponse answer)
      throws IOException {
    log.warn("Refused by the database: {}", refusal.getMostSpecificCause().getMessage());
    send(answer, HttpStatus.BAD_REQUEST);
  }

  private static void send(HttpServletResponse answer, HttpStatus status) throws IOException {
    answer.sendError(status.value());
  }
}
