package trialwood.analysis.rate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ChebyshevTest {

  @ParameterizedTest
  @ValueSource(ints = {24, 25, 40, 64})
  void the_exponential_and_its_integral_come_back(int n) {
    double[] points = Chebyshev.points(-1, 2, n);
    double[] weights = Chebyshev.weights(n);
    Chebyshev series = new Chebyshev(-1, 2, Arrays.stream(points).map(Math::exp).toArray());
    assertThat(series.at(0.3)).isCloseTo(Math.exp(0.3), within(1e-13));
    assertThat(series.integralTo(0.3)).isCloseTo(Math.exp(0.3) - Math.exp(-1), within(1e-13));
    double sum = 0;
    for (int i = 0; i < n; i++) {
      sum += 3 * weights[i] * Math.exp(points[i]);
    }
    assertThat(sum).isCloseTo(Math.exp(2) - Math.exp(-1), within(1e-13));
    assertThat(series.integralTo(5)).isCloseTo(sum, within(1e-13));
    assertThat(series.integralTo(-5)).isCloseTo(0, within(1e-13));
  }
}
