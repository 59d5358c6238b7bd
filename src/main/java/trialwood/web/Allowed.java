package trialwood.web;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import trialwood.people.Role;

/**
 * Who may call a controller's method. Stands on the method or, for all of its methods, on the
 * class; the method's own word counts first. A method without one is closed to everybody. Use the
 * annotations that are composed of it: {@link ForBench}, {@link ForStaff} and their like.
 */
@Documented
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.METHOD, ElementType.TYPE})
public @interface Allowed {

  Role[] value() default {};

  /** Also those who are not signed in. */
  boolean anonymous() default false;
}
