package trialwood.walk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.MessageDigest;
import java.util.Base64;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.annotation.Import;
import org.springframework.test.annotation.DirtiesContext;
import org.springframework.test.context.ActiveProfiles;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;

/**
 * The application with a certificate of its own, as docs/operations.md makes it with the JDK's
 * keytool, on a phone that trusts it.
 */
@Served
@ActiveProfiles("test")
@Import(SecondNursery.class)
@DirtiesContext
class HttpsTest {

  private static final String SECRET = "only for this test";

  @TempDir private static Path folder;

  @LocalServerPort private int port;

  @DynamicPropertySource
  static void certificate(DynamicPropertyRegistry settings) {
    Path store = folder.resolve("nursery.p12");
    settings.add("server.ssl.key-store", () -> made(store).toUri().toString());
    settings.add("server.ssl.key-store-password", () -> SECRET);
    settings.add("server.servlet.session.cookie.secure", () -> "true");
  }

  @BeforeAll
  static void moveIn(@Autowired SecondNursery nursery) throws IOException {
    nursery.moveIn();
  }

  @Test
  void a_phone_that_trusts_the_certificate_keeps_pages_and_sends_its_cookie_on_no_other_way()
      throws Exception {
    String setting = "--ignore-certificate-errors-spki-list=" + fingerprint();
    try (Browser phone =
        Browser.phone(
            "https://127.0.0.1:" + port, "--user-data-dir=" + folder.resolve("phone"), setting)) {
      phone.signIn("piet", SecondNursery.PASSWORD);
      phone.open("/bench/trays/M9-31-3");
      assertThat(
              phone.ask(
                  "done(window.isSecureContext && (await navigator.serviceWorker.ready).scope)"))
          .isEqualTo("https://127.0.0.1:" + port + "/");
      assertThat(phone.sessionCookieIsSecure()).isTrue();
    }
  }

  private static Path made(Path store) {
    if (Files.exists(store)) {
      return store;
    }
    try {
      Process keytool =
          new ProcessBuilder(
                  Path.of(System.getProperty("java.home"), "bin", "keytool").toString(),
                  "-genkeypair",
                  "-alias",
                  "nursery",
                  "-keyalg",
                  "EC",
                  "-dname",
                  "CN=trialwood.home.arpa",
                  "-ext",
                  "san=ip:127.0.0.1",
                  "-validity",
                  "30",
                  "-storetype",
                  "PKCS12",
                  "-keystore",
                  store.toString(),
                  "-storepass",
                  SECRET)
              .inheritIO()
              .start();
      assertThat(keytool.waitFor()).isZero();
    } catch (IOException | InterruptedException failed) {
      throw new IllegalStateException(failed);
    }
    return store;
  }

  /** SHA-256 of the certificate's public key, as Chromium takes it. */
  private static String fingerprint() throws IOException, GeneralSecurityException {
    KeyStore store = KeyStore.getInstance("PKCS12");
    try (InputStream file = Files.newInputStream(folder.resolve("nursery.p12"))) {
      store.load(file, SECRET.toCharArray());
    }
    byte[] key = store.getCertificate("nursery").getPublicKey().getEncoded();
    return Base64.getEncoder().encodeToString(MessageDigest.getInstance("SHA-256").digest(key));
  }
}
