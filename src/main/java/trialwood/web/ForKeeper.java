package trialwood.web;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import trialwood.people.Role;

/** Open to those who keep the ground data: the breeder and the administrator. */
@Documented
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.METHOD, ElementType.TYPE})
@Allowed({Role.ADMINISTRATOR, Role.BREEDER})
public @interface ForKeeper {}
