package leadline.stats;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import leadline.stats.FitOutcome.NoFiniteMaximum;

/** What came of a regression of lives on covariates by maximum likelihood. */
public sealed interface RegressionOutcome {

  /** The regression; empty where there is none. */
  default Optional<WeibullRegression> regression() {
    return Optional.empty();
  }

  /** The likelihood has one highest point, and this is it. */
  record Fitted(WeibullRegression found) implements RegressionOutcome {
    @Override
    public Optional<WeibullRegression> regression() {
      return Optional.of(found);
    }
  }

  /** There is no highest point, whatever the covariates did. */
  record WithoutMaximum(NoFiniteMaximum<WeibullRegression> none) implements RegressionOutcome {}

  /**
   * Covariates that say the same, so that no data tell their effects apart.
   *
   * @param covariates one of which is a sum of multiples of the others and a constant; a single one
   *     does not vary
   */
  record Collinear(List<String> covariates) implements RegressionOutcome {}

  /**
   * Covariates that part lives of which none failed, or of which nothing is known but that they
   * failed: the likelihood rises for ever as their effects grow.
   *
   * @param all the test of all covariates, which remains
   */
  record Separated(List<Separation> effects, ChiSquared all) implements RegressionOutcome {}

  /**
   * Of a covariate whose hazard ratio has no estimate.
   *
   * @param limit the one-sided limit of the hazard ratio, approximate, by the signed root of the
   *     likelihood ratio: a lower one where the likelihood rises towards infinity, an upper one
   *     towards 0; empty where there is none, and at a confidence of a half or less
   */
  record Separation(String covariate, Edge towards, Function<Confidence, OptionalDouble> limit) {}

  /** Where a likelihood rises to for ever. */
  enum Edge {
    ZERO,
    INFINITY
  }
}
