package trialwood.web;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * A page that the navigation leads to, for those who may open it. Stands on the method that shows
 * the page; its address is the method's own.
 */
@Documented
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.METHOD)
public @interface Place {

  /** What a template hands to the layout as {@code active}. */
  String key();

  /** What people read. */
  String label();

  /** Where it stands in the row; lower comes first. */
  int order();
}
