package trialwood.web;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What a page sends: always a record, never an entity. See {@link Forms}. */
public interface Form {

  /** Drawn when the page was opened; a form sent twice carries it twice. */
  @Nullable UUID formKey();
}
