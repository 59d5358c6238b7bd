package trialwood.analysis.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class FormulaTest {

  @Test
  void a_star_stands_for_all_combinations_and_shorter_terms_come_first() {
    Formula formula = Formula.of("yield ~ block + N*P*K (factors; N:P:K confounded with blocks)");
    assertThat(formula.response()).isEqualTo("yield");
    assertThat(formula.terms())
        .containsExactly("block", "N", "P", "K", "N:P", "N:K", "P:K", "N:P:K");
    assertThat(formula.random()).isEmpty();
    assertThat(formula.fixedFactors()).containsExactly("block", "N", "P", "K");
  }

  @Test
  void random_intercepts_are_told_from_remarks() {
    Formula formula = Formula.of("y ~ env + entry + (1|entry:site) + (1 | entry:env) (a remark)");
    assertThat(formula.terms()).containsExactly("env", "entry");
    assertThat(formula.random()).containsExactly(List.of("entry", "site"), List.of("entry", "env"));
  }

  @Test
  void a_model_of_the_mean_alone_has_no_fixed_factor() {
    Formula formula = Formula.of("strength ~ 1 + (1 | sample) + (1 | batch)");
    assertThat(formula.fixed()).isEmpty();
    assertThat(formula.random()).containsExactly(List.of("sample"), List.of("batch"));
  }
}
