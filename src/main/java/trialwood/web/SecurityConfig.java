package trialwood.web;

import jakarta.servlet.DispatcherType;
import java.util.regex.Pattern;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.core.session.SessionRegistry;
import org.springframework.security.core.session.SessionRegistryImpl;
import org.springframework.security.crypto.factory.PasswordEncoderFactories;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.firewall.StrictHttpFirewall;
import org.springframework.security.web.header.writers.ReferrerPolicyHeaderWriter.ReferrerPolicy;
import org.springframework.security.web.session.HttpSessionEventPublisher;

/** Who gets in, and what a browser is told. CSRF protection and new sessions are the defaults. */
@Configuration(proxyBeanMethods = false)
class SecurityConfig {

  /** The name of a box: alone, one of several alike, or on a line of a sheet. */
  private static final Pattern BOX =
      Pattern.compile(
          "([^\\[\\]]*|[_!]?(rows|lines|sources)\\[\\d{1,3}]\\.[^\\[\\]]*)(\\[\\d{0,3}])?");

  private static final String CONTENT_POLICY =
      "default-src 'self'; script-src 'self'; style-src 'self'; img-src 'self' data:;"
          + " object-src 'none'; base-uri 'self'; frame-ancestors 'none'; form-action 'self'";

  @Bean
  SecurityFilterChain pages(
      HttpSecurity http, Doors doors, LateForms lateForms, SessionRegistry sessions)
      throws Exception {
    return http.authorizeHttpRequests(
            requests ->
                requests
                    .dispatcherTypeMatchers(DispatcherType.ERROR, DispatcherType.FORWARD)
                    .permitAll()
                    .requestMatchers("/css/**", "/js/**", "/icon.svg", DeviceScript.ADDRESS)
                    .permitAll()
                    .anyRequest()
                    .access(doors))
        .formLogin(form -> form.loginPage("/sign-in").failureForwardUrl("/sign-in/failed"))
        .exceptionHandling(refusals -> refusals.accessDeniedHandler(lateForms))
        .sessionManagement(
            // no limit, only a list, so that a closed account's sessions can be ended
            session -> session.maximumSessions(-1).sessionRegistry(sessions).expiredUrl("/sign-in"))
        .logout(out -> out.logoutUrl("/sign-out").logoutSuccessUrl("/sign-in?out"))
        .headers(
            headers ->
                headers
                    .contentSecurityPolicy(csp -> csp.policyDirectives(CONTENT_POLICY))
                    .referrerPolicy(referrer -> referrer.policy(ReferrerPolicy.SAME_ORIGIN)))
        .build();
  }

  @Bean
  SessionRegistry sessionRegistry() {
    return new SessionRegistryImpl();
  }

  /** Tells the registry of sessions that ran out. */
  @Bean
  HttpSessionEventPublisher sessionEvents() {
    return new HttpSessionEventPublisher();
  }

  @Bean
  PasswordEncoder passwordEncoder() {
    return PasswordEncoderFactories.createDelegatingPasswordEncoder();
  }

  /**
   * A null character is no text: PostgreSQL cannot keep it, no person can type it. A name that no
   * box of ours bears (a negative line, a line of a line) is no name.
   */
  @Bean
  StrictHttpFirewall firewall() {
    StrictHttpFirewall firewall = new StrictHttpFirewall();
    firewall.setAllowedParameterValues(value -> value.indexOf('\0') < 0);
    firewall.setAllowedParameterNames(BOX.asMatchPredicate());
    return firewall;
  }
}
