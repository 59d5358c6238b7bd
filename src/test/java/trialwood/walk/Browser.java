package trialwood.walk;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.results.Rule;
import com.deque.html.axecore.selenium.AxeBuilder;
import java.io.File;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Base64;
import java.util.List;
import java.util.logging.Level;
import org.openqa.selenium.By;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.Keys;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.WebDriverException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import org.openqa.selenium.support.ui.ExpectedConditions;
import org.openqa.selenium.support.ui.Select;
import org.openqa.selenium.support.ui.WebDriverWait;

/**
 * Somebody at a screen. What is done is said by the words on the page, as a person would find them.
 * On closing it is asserted that no page went against its own content policy.
 */
class Browser implements AutoCloseable {

  static final String CHROMIUM = "/usr/bin/chromium";
  static final String DRIVER = "/usr/bin/chromedriver";

  private static final List<String> WCAG_2_2_AA =
      List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa");

  private final String root;
  private final ChromeDriver driver;
  private final WebDriverWait patience;

  private Browser(int port, int width, int height) {
    this("http://127.0.0.1:" + port, width, height, new String[0]);
  }

  private Browser(String root, int width, int height, String... settings) {
    this.root = root;
    this.driver = new ChromeDriver(service(), options(width, height).addArguments(settings));
    this.patience = new WebDriverWait(driver, Duration.ofSeconds(30));
    driver.manage().window().setSize(new Dimension(width, height));
  }

  static Browser phone(int port) {
    return phone("http://127.0.0.1:" + port);
  }

  /** A phone that is used again after it was switched off. */
  static Browser phone(int port, Path storage) {
    return phone("http://127.0.0.1:" + port, "--user-data-dir=" + storage);
  }

  /**
   * @param settings what the phone's owner has set, as Chromium's own switches
   */
  static Browser phone(String root, String... settings) {
    Browser phone = new Browser(root, 390, 844, settings);
    phone.look(390, 844);
    return phone;
  }

  static Browser desk(int port) {
    Browser desk = new Browser(port, 1280, 900);
    desk.look(1280, 900);
    return desk;
  }

  /** The page's own size: a headless window is never narrower than some 500 px. */
  private void look(int width, int height) {
    driver.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        java.util.Map.of(
            "width", width, "height", height, "deviceScaleFactor", 1, "mobile", width < 600));
  }

  private static ChromeDriverService service() {
    return new ChromeDriverService.Builder().usingDriverExecutable(new File(DRIVER)).build();
  }

  private static ChromeOptions options(int width, int height) {
    ChromeOptions options = new ChromeOptions();
    options.setBinary(CHROMIUM);
    options.addArguments(
        "--headless=new",
        "--no-sandbox",
        "--disable-gpu",
        "--disable-dev-shm-usage",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
        "--no-first-run",
        "--hide-scrollbars",
        "--window-size=%d,%d".formatted(width, height));
    LoggingPreferences logs = new LoggingPreferences();
    logs.enable(LogType.BROWSER, Level.ALL);
    options.setCapability("goog:loggingPrefs", logs);
    return options;
  }

  void signIn(String username, String password) {
    open("/sign-in");
    signInHere(username, password);
  }

  /** Signs in on the page that is open. */
  void signInHere(String username, String password) {
    type("username", username);
    type("password", password);
    press("Sign in");
    patience.until(ExpectedConditions.presenceOfElementLocated(By.cssSelector(".viewer")));
  }

  boolean sessionCookieIsSecure() {
    return driver.manage().getCookieNamed("JSESSIONID").isSecure();
  }

  void signOut() {
    leave(driver.findElement(By.cssSelector(".viewer button")));
  }

  void open(String path) {
    driver.get(root + path);
  }

  /** Follows the link of these words, or else one that has them among others. */
  void follow(String words) {
    leave(
        driver.findElements(By.linkText(words)).stream()
            .findFirst()
            .orElseGet(() -> driver.findElement(By.partialLinkText(words))));
  }

  /** What the link of these words leads to, fetched as the person who is signed in. */
  byte[] fetch(String words) {
    String url =
        (String)
            driver.executeAsyncScript(
                """
                const [link, done] = arguments;
                fetch(link.href).then((answer) => answer.blob()).then((file) => {
                  const reader = new FileReader();
                  reader.onload = () => done(reader.result);
                  reader.readAsDataURL(file);
                });
                """,
                driver.findElement(By.partialLinkText(words)));
    return Base64.getDecoder().decode(url.substring(url.indexOf(',') + 1));
  }

  /** The session runs out while the page stays open. */
  void loseSession() {
    driver.manage().deleteCookieNamed("JSESSIONID");
  }

  /** Opens what is folded under these words. */
  void unfold(String words) {
    driver.findElement(By.xpath("//main//summary[contains(., '%s')]".formatted(words))).click();
  }

  /** Presses the button of these words and waits for the next page. */
  void press(String words) {
    leave(button(words));
  }

  /** Two taps of a wet thumb. */
  void pressTwice(String words) {
    WebElement button = button(words);
    stay();
    driver.executeScript("arguments[0].click(); arguments[0].click();", button);
    patience.until(left -> hasLeft());
  }

  private WebElement button(String words) {
    return driver.findElement(By.xpath("//main//button[normalize-space()='" + words + "']"));
  }

  private void leave(WebElement control) {
    driver.executeScript("arguments[0].scrollIntoView({block: 'center'})", control);
    stay();
    control.click();
    patience.until(left -> hasLeft());
  }

  /** Marks the page, so that the next one can be told from it. */
  private void stay() {
    driver.executeScript("window.stillHere = true");
  }

  /** Whether the next page is there, whole; between two pages the driver has nothing to ask. */
  private boolean hasLeft() {
    try {
      return (boolean)
          driver.executeScript(
              "return window.stillHere !== true && document.readyState === 'complete'");
    } catch (WebDriverException betweenPages) {
      return false;
    }
  }

  /** Types at a scanner's speed into the box that has the focus, and waits for the next page. */
  void scan(String keys) {
    stay();
    driver.switchTo().activeElement().sendKeys(keys);
    patience.until(left -> hasLeft());
  }

  /** The name of the box that has the focus. */
  String focused() {
    return driver.switchTo().activeElement().getDomAttribute("name");
  }

  /** Until the same code counts as scanned anew. */
  void waitBeyondDoubleRead() {
    driver.executeAsyncScript("setTimeout(arguments[0], 1100)");
  }

  void type(String field, String text) {
    WebElement box = driver.findElement(By.name(field));
    box.clear();
    box.sendKeys(text);
  }

  /** Types into whatever box has the focus, Enter as a line break. */
  void typeOn(String text) {
    new Actions(driver).sendKeys(text.replace("\n", Keys.ENTER)).perform();
  }

  /** Picks the option of these words from a list. */
  void pick(String field, String words) {
    new Select(driver.findElement(By.name(field))).selectByVisibleText(words);
  }

  String typed(String field) {
    return driver.findElement(By.name(field)).getDomProperty("value");
  }

  /** Taps the tile of these words among the choices of a field. */
  void choose(String field, String words) {
    WebElement tile =
        driver.findElement(
            By.xpath(
                "//label[.//input[@name='%s']][starts-with(normalize-space(.), '%s')]"
                    .formatted(field, words)));
    driver.executeScript("arguments[0].scrollIntoView({block: 'center'})", tile);
    tile.click();
  }

  /** What is said to be wrong, beside the field. */
  String wrong(String field) {
    return driver
        .findElement(
            By.xpath("//*[@name='%s']/ancestor::*[contains(@class, 'has-error')]".formatted(field)))
        .findElement(By.className("wrong"))
        .getText();
  }

  /** The line of a table or list in which these words stand. */
  String row(String words) {
    return driver
        .findElement(By.xpath("//*[self::tr or self::li][contains(., '%s')]".formatted(words)))
        .getText();
  }

  /** Waits until the page's line about what is not sent says so. */
  void untilOutboxSays(String words) {
    patience.until(
        ExpectedConditions.textToBePresentInElementLocated(By.className("outbox"), words));
  }

  /** Waits until these words stand on the page. */
  void untilSays(String words) {
    patience.until(ExpectedConditions.textToBePresentInElementLocated(By.tagName("body"), words));
  }

  /** Presses a button that leads to no other page. */
  void tap(String words) {
    WebElement button = button(words);
    driver.executeScript("arguments[0].scrollIntoView({block: 'center'})", button);
    button.click();
  }

  /** What a script of the page's own origin answers; it ends with {@code done(answer)}. */
  Object ask(String script) {
    return driver.executeAsyncScript(
        "const done = arguments[arguments.length - 1]; (async () => {" + script + "})();");
  }

  String text() {
    return driver.findElement(By.tagName("body")).getText();
  }

  String path() {
    return driver.getCurrentUrl().substring(root.length());
  }

  /** Whether nothing sticks out of the window sideways. */
  boolean fits() {
    return (boolean)
        driver.executeScript(
            "return document.documentElement.scrollWidth <= document.documentElement.clientWidth");
  }

  /** What goes against WCAG 2.2 AA, one line each. */
  List<String> barriers() {
    return new AxeBuilder()
        .withTags(WCAG_2_2_AA).analyze(driver).getViolations().stream()
            .map(Browser::sentence)
            .toList();
  }

  private static String sentence(Rule rule) {
    return "%s (%s): %s"
        .formatted(
            rule.getHelp(),
            rule.getId(),
            rule.getNodes().stream().map(node -> node.getHtml()).limit(3).toList());
  }

  /** A picture of the window, as PNG. */
  byte[] picture() {
    return driver.getScreenshotAs(OutputType.BYTES);
  }

  /** What a hand did since it was asked last: pointer taps and keys that the browser trusts. */
  record Hands(int taps, int keys) {}

  /** From now on every page counts what a hand does to it; nothing a script does is counted. */
  void countHands() {
    String script =
        """
        for (const [kind, is] of [["click", (e) => e.detail > 0], ["keydown", () => true]]) {
          addEventListener(kind, (event) => {
            if (!event.isTrusted || !is(event)) return;
            sessionStorage.setItem(kind, 1 + Number(sessionStorage.getItem(kind)));
          }, true);
        }
        """;
    driver.executeCdpCommand(
        "Page.addScriptToEvaluateOnNewDocument", java.util.Map.of("source", script));
    driver.navigate().refresh();
  }

  /** What was counted, and begins anew. */
  Hands hands() {
    Hands hands = new Hands(counted("click"), counted("keydown"));
    driver.executeScript("sessionStorage.clear()");
    return hands;
  }

  private int counted(String kind) {
    return ((Number)
            driver.executeScript("return Number(sessionStorage.getItem(arguments[0]))", kind))
        .intValue();
  }

  /** Taps a box and types into it. */
  void tapInto(String field, String text) {
    WebElement box = driver.findElement(By.name(field));
    driver.executeScript("arguments[0].scrollIntoView({block: 'center'})", box);
    box.click();
    new org.openqa.selenium.interactions.Actions(driver).sendKeys(text).perform();
  }

  /** Taps the button that begins with these words and stays on the page. */
  void tapButton(String words) {
    WebElement button =
        driver.findElement(
            By.xpath("//main//button[starts-with(normalize-space(), '%s')]".formatted(words)));
    driver.executeScript("arguments[0].scrollIntoView({block: 'center'})", button);
    button.click();
  }

  /** Bytes of the page and of the styles, scripts and icon that it links, not compressed. */
  int weight() {
    return ((Number)
            driver.executeScript(
                """
                const parts = performance.getEntriesByType("resource")
                  .filter((it) => !["fetch", "xmlhttprequest"].includes(it.initiatorType));
                return [...performance.getEntriesByType("navigation"), ...parts]
                  .reduce((sum, it) => sum + it.decodedBodySize, 0);
                """))
        .intValue();
  }

  @Override
  public void close() {
    try {
      assertThat(driver.manage().logs().get(LogType.BROWSER).getAll())
          .extracting(LogEntry::getMessage)
          .noneMatch(message -> message.contains("Content Security Policy"));
    } finally {
      driver.quit();
    }
  }
}
