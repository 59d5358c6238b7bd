package trialwood.web;

import java.util.function.Supplier;
import org.springframework.http.HttpStatus;
import org.springframework.web.bind.annotation.ResponseStatus;

/** Nothing is kept under the address that was asked for. */
@ResponseStatus(HttpStatus.NOT_FOUND)
public class NotFound extends RuntimeException {

  public NotFound(String what) {
    super("There is no " + what + ".");
  }

  /** For {@code batches.findById(id).orElseThrow(NotFound.of("batch"))}. */
  public static Supplier<NotFound> of(String what) {
    return () -> new NotFound(what);
  }
}
