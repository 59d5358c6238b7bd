package trialwood;

import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;

/** Starts the application. */
@SpringBootApplication
public class Trialwood {

  public static void main(String[] args) {
    SpringApplication.run(Trialwood.class, args);
  }
}
