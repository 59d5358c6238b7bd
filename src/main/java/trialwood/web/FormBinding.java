package trialwood.web;

import org.springframework.web.bind.WebDataBinder;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.InitBinder;

/** A form is read into the constructor of its record, and nothing that it says goes elsewhere. */
@ControllerAdvice
class FormBinding {

  /** Lines of the longest sheet: {@code rows[0]} to {@code rows[999]}. */
  private static final int MOST_LINES = 1000;

  @InitBinder
  void intoTheConstructorOnly(WebDataBinder binder) {
    binder.setDeclarativeBinding(true);
    binder.setAutoGrowCollectionLimit(MOST_LINES);
  }
}
