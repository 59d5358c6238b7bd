package trialwood.walk;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtensionContext;

/** Skips a walk where there is no Chromium; with CI=true it is run, and fails, all the same. */
class ChromiumAtHand implements ExecutionCondition {

  @Override
  public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
    boolean there =
        Files.isExecutable(Path.of(Browser.CHROMIUM))
            && Files.isExecutable(Path.of(Browser.DRIVER));
    return there || "true".equals(System.getenv("CI"))
        ? ConditionEvaluationResult.enabled("a browser is at hand, or must be")
        : ConditionEvaluationResult.disabled(
            "No browser: install chromium and chromium-driver to run this");
  }
}
