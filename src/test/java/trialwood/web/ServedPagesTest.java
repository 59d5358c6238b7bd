package trialwood.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.CookieManager;
import java.net.HttpCookie;
import java.net.Socket;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.test.context.ActiveProfiles;
import trialwood.people.Account;
import trialwood.people.Accounts;
import trialwood.people.Role;

/** What only a real server shows: cookies, sessions, hand-overs, error pages. */
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
@ActiveProfiles("test")
class ServedPagesTest {

  private static final String PASSWORD = "rain on the mist house";
  private static final Pattern TOKEN = Pattern.compile("name=\"_csrf\" value=\"([^\"]+)\"");

  private final CookieManager cookies = new CookieManager();
  private final HttpClient browser = HttpClient.newBuilder().cookieHandler(cookies).build();

  @LocalServerPort int port;
  @Autowired Accounts accounts;
  @Autowired PasswordEncoder encoder;

  @BeforeEach
  void the_breeder_has_an_account() {
    if (accounts.findByUsername("runa").isEmpty()) {
      accounts.save(new Account("runa", encoder.encode(PASSWORD), Role.BREEDER, null, Set.of()));
    }
  }

  @Test
  void signing_in_starts_a_new_session_whose_cookie_no_script_can_read() throws Exception {
    String token = token("/sign-in");
    HttpCookie before = session();

    HttpResponse<String> answer = signIn(token, "runa", PASSWORD);

    assertThat(answer.statusCode()).isEqualTo(302);
    assertThat(session().getValue()).isNotEqualTo(before.getValue());
    assertThat(answer.headers().firstValue("Set-Cookie").orElseThrow())
        .contains("HttpOnly", "SameSite=Lax");
  }

  @Test
  void a_failed_sign_in_shows_the_page_again_with_the_name() throws Exception {
    HttpResponse<String> answer = signIn(token("/sign-in"), "runa", "guessed");

    assertThat(answer.statusCode()).isEqualTo(401);
    assertThat(answer.body())
        .contains("Name and password do not belong together", "value=\"runa\"")
        .doesNotContain("guessed");
  }

  @Test
  void what_is_not_there_is_said_in_plain_words_with_the_way_back() throws Exception {
    signIn(token("/sign-in"), "runa", PASSWORD);

    HttpResponse<String> answer = get("/no/such/page");

    assertThat(answer.statusCode()).isEqualTo(404);
    assertThat(answer.body())
        .contains("There is no such record", "Sign out", "breeder")
        .doesNotContain("Exception", "<p>404</p>");
  }

  @Test
  void a_form_without_its_token_is_refused_with_a_page() throws Exception {
    HttpResponse<String> answer = post("/sign-in", "username=runa");

    assertThat(answer.statusCode()).isEqualTo(403);
    assertThat(answer.body()).contains("This page is not open to you");
  }

  @Test
  void broken_requests_never_break_the_server() throws Exception {
    signIn(token("/sign-in"), "runa", PASSWORD);

    for (String address :
        new String[] {
          "/?q=%00", "/%2e%2e/secret", "/sign-in;x=1", "/error", "/sign-in?q=%zz", "//sign-in"
        }) {
      assertThat(raw(address)).as(address).isBetween(200, 499);
    }
  }

  @Test
  void a_file_that_is_too_large_is_refused_with_its_reason() throws Exception {
    String token = token("/sign-in");
    String boundary = "----trialwood";
    byte[] head =
        ("--%s\r\nContent-Disposition: form-data; name=\"file\"; filename=\"x.csv\"\r\n\r\n"
                .formatted(boundary))
            .getBytes(StandardCharsets.UTF_8);
    HttpRequest request =
        to("/sign-in?_csrf=" + URLEncoder.encode(token, StandardCharsets.UTF_8))
            .header("Content-Type", "multipart/form-data; boundary=" + boundary)
            .POST(
                BodyPublishers.concat(
                    BodyPublishers.ofByteArray(head),
                    BodyPublishers.ofByteArray(new byte[22 << 20]),
                    BodyPublishers.ofString("\r\n--" + boundary + "--\r\n")))
            .build();

    HttpResponse<String> answer = browser.send(request, BodyHandlers.ofString());

    assertThat(answer.statusCode()).isEqualTo(413);
    assertThat(answer.body()).contains("That file is too large");
  }

  /** Sent as it stands; Java's own client would mend it first. */
  private int raw(String address) throws IOException {
    try (Socket socket = new Socket("127.0.0.1", port)) {
      socket
          .getOutputStream()
          .write(
              ("GET " + address + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n")
                  .getBytes(StandardCharsets.US_ASCII));
      String answer =
          new String(socket.getInputStream().readAllBytes(), StandardCharsets.ISO_8859_1);
      return Integer.parseInt(answer.substring(9, 12));
    }
  }

  private HttpResponse<String> signIn(String token, String name, String password) throws Exception {
    return post(
        "/sign-in",
        "username=%s&password=%s&_csrf=%s"
            .formatted(
                name,
                URLEncoder.encode(password, StandardCharsets.UTF_8),
                URLEncoder.encode(token, StandardCharsets.UTF_8)));
  }

  private String token(String address) throws Exception {
    Matcher token = TOKEN.matcher(get(address).body());
    assertThat(token.find()).isTrue();
    return token.group(1);
  }

  private HttpCookie session() {
    return cookies.getCookieStore().getCookies().stream()
        .filter(cookie -> cookie.getName().equals("JSESSIONID"))
        .findFirst()
        .orElseThrow();
  }

  private HttpResponse<String> get(String address) throws Exception {
    return browser.send(to(address).GET().build(), BodyHandlers.ofString());
  }

  private HttpResponse<String> post(String address, String form) throws Exception {
    return browser.send(
        to(address)
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(BodyPublishers.ofString(form))
            .build(),
        BodyHandlers.ofString());
  }

  private HttpRequest.Builder to(String address) {
    return HttpRequest.newBuilder(URI.create("http://localhost:" + port + address))
        .header("Accept", "text/html");
  }
}
