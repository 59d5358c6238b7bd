package trialwood.testing;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.util.concurrent.TimeUnit;
import org.springframework.boot.jdbc.autoconfigure.JdbcConnectionDetails;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.boot.testcontainers.service.connection.ServiceConnection;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Condition;
import org.springframework.context.annotation.ConditionContext;
import org.springframework.context.annotation.Conditional;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.type.AnnotatedTypeMetadata;
import org.testcontainers.postgresql.PostgreSQLContainer;
import org.testcontainers.utility.DockerImageName;

/**
 * A PostgreSQL 17 for the test that imports this, never a skip: in a container where an engine has
 * the image, otherwise unpacked and started on this machine. {@code TRIALWOOD_TEST_POSTGRES}
 * decides by hand: {@code docker}, {@code embedded} or {@code auto}.
 */
@TestConfiguration(proxyBeanMethods = false)
public class PostgresTestDatabase {

  private static final String IMAGE = "postgres:17-alpine";
  private static final boolean DOCKER = prefersDocker();

  /** In a container. */
  @Configuration(proxyBeanMethods = false)
  @Conditional(OnDocker.class)
  static class InDocker {

    @Bean
    @ServiceConnection
    PostgreSQLContainer postgres() {
      return new PostgreSQLContainer(
          DockerImageName.parse(IMAGE).asCompatibleSubstituteFor("postgres"));
    }
  }

  /** On this machine. */
  @Configuration(proxyBeanMethods = false)
  @Conditional(OnNoDocker.class)
  static class Embedded {

    @Bean(destroyMethod = "close")
    EmbeddedPostgres postgres() throws IOException {
      // a test's database need not survive a power cut
      return EmbeddedPostgres.builder().setServerConfig("fsync", "off").start();
    }

    @Bean
    JdbcConnectionDetails connection(EmbeddedPostgres postgres) {
      return new JdbcConnectionDetails() {
        @Override
        public String getJdbcUrl() {
          return postgres.getJdbcUrl("postgres", "postgres");
        }

        @Override
        public String getUsername() {
          return "postgres";
        }

        @Override
        public String getPassword() {
          return "postgres";
        }
      };
    }
  }

  static class OnDocker implements Condition {
    @Override
    public boolean matches(ConditionContext context, AnnotatedTypeMetadata metadata) {
      return DOCKER;
    }
  }

  static class OnNoDocker implements Condition {
    @Override
    public boolean matches(ConditionContext context, AnnotatedTypeMetadata metadata) {
      return !DOCKER;
    }
  }

  private static boolean prefersDocker() {
    String wish = System.getenv().getOrDefault("TRIALWOOD_TEST_POSTGRES", "auto");
    return switch (wish) {
      case "docker" -> true;
      case "embedded" -> false;
      case "auto" -> hasImage();
      default ->
          throw new IllegalArgumentException(
              "TRIALWOOD_TEST_POSTGRES is docker, embedded or auto, not " + wish);
    };
  }

  /** Proves the engine and the image at once, and starts nothing. */
  private static boolean hasImage() {
    try {
      Process inspect =
          new ProcessBuilder("docker", "image", "inspect", IMAGE)
              .redirectErrorStream(true)
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .start();
      if (!inspect.waitFor(10, TimeUnit.SECONDS)) {
        inspect.destroy();
        return false;
      }
      return inspect.exitValue() == 0;
    } catch (IOException noDocker) {
      return false;
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      return false;
    }
  }
}
