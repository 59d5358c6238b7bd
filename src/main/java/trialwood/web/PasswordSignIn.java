package trialwood.web;

import org.springframework.security.authentication.AuthenticationProvider;
import org.springframework.security.authentication.LockedException;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.authentication.dao.DaoAuthenticationProvider;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.userdetails.UserDetailsService;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Component;

/** Signs in by name and password, unless the name has been tried too often. */
@Component
class PasswordSignIn implements AuthenticationProvider {

  private final DaoAuthenticationProvider passwords;
  private final SignInThrottle throttle;

  PasswordSignIn(UserDetailsService accounts, PasswordEncoder encoder, SignInThrottle throttle) {
    this.passwords = new DaoAuthenticationProvider(accounts);
    this.passwords.setPasswordEncoder(encoder);
    this.throttle = throttle;
  }

  @Override
  public Authentication authenticate(Authentication attempt) {
    if (!throttle.admits(attempt.getName())) {
      throw new LockedException("Too many tries.");
    }
    Authentication signedIn = passwords.authenticate(attempt);
    throttle.forget(attempt.getName());
    return signedIn;
  }

  @Override
  public boolean supports(Class<?> attempt) {
    return UsernamePasswordAuthenticationToken.class.isAssignableFrom(attempt);
  }
}
