package leadline.stats;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import leadline.stats.FitOutcome.NoFiniteMaximum;
import leadline.stats.FitOutcome.Reason;
import leadline.stats.ProfileLikelihood.Side;
import leadline.stats.RegressionOutcome.Collinear;
import leadline.stats.RegressionOutcome.Edge;
import leadline.stats.RegressionOutcome.Fitted;
import leadline.stats.RegressionOutcome.Separated;
import leadline.stats.RegressionOutcome.Separation;
import leadline.stats.RegressionOutcome.WithoutMaximum;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealVector;

/** The way to the highest point of a regression's likelihood, or to why there is none. */
final class RegressionSearch {

  /** Below, over the whole range of ages, no shape is left that a fit could tell from 0. */
  private static final double NO_SHAPE = 1e-5;

  /** Shapes to start from, as multiples of the one that the data suggest. */
  private static final double[] STARTS = {1, 0.2, 4};

  /** Of a parameter: a level way with longer steps leads to infinity. */
  private static final double SHORT_STEP = 1e-4;

  /** Of a direction of length 1. */
  private static final double NO_PART = 1e-6;

  private final RegressionData data;
  private final LifeData pooled;

  RegressionSearch(RegressionData data) {
    this.data = data;
    this.pooled = data.pooled();
  }

  RegressionOutcome outcome() {
    Optional<Reason> reason = Existence.reasonAgainst(pooled);
    if (reason.isPresent() && reason.get() != Reason.NO_RISE_WITH_AGE) {
      return without(reason.get());
    }
    List<String> collinear = Collinearity.of(data);
    if (!collinear.isEmpty()) {
      return new Collinear(collinear);
    }
    return new Ways(new RegressionLikelihood(data)).outcome();
  }

  private boolean hasExactFailure() {
    return pooled.lives().stream().anyMatch(alike -> alike.life() instanceof Life.FailedAt);
  }

  private RegressionOutcome without(Reason reason) {
    return new WithoutMaximum(
        new NoFiniteMaximum<>(reason, confidence -> SurvivalBound.of(pooled, confidence)));
  }

  private final class Ways {

    private final RegressionLikelihood likelihood;
    private final double leastShape = NO_SHAPE / pooled.logAges().range();

    Ways(RegressionLikelihood likelihood) {
      this.likelihood = likelihood;
    }

    RegressionOutcome outcome() {
      Recession recession = new Recession(likelihood, data);
      Optional<RealVector> direction = recession.direction();
      if (direction.isEmpty()) {
        return highest().orElseGet(() -> without(reasonOfNoTop()));
      }
      if (direction.get().getEntry(RegressionLikelihood.SHAPE) <= NO_PART) {
        return separated(direction.get());
      }
      Reason reason =
          recession.isOfShapeAlone(direction.get()) && !hasExactFailure()
              ? Reason.ONE_INSPECTION_AGE
              : Reason.ALL_AT_ONE_AGE;
      return pooled.hasDelayedEntry() && !hasExactFailure()
          ? highest().orElseGet(() -> without(reason))
          : without(reason);
    }

    private Optional<RegressionOutcome> highest() {
      boolean hasOnePeak = !pooled.hasDelayedEntry() || pooled.hasOnlyExactFailures();
      return DoubleStream.of(hasOnePeak ? new double[] {1} : STARTS)
          .mapToObj(factor -> all().highest(start(factor)))
          .filter(this::isTop)
          .max(Comparator.comparingDouble(Ascent.Point::value))
          .map(top -> new Fitted(new WeibullRegression(data.covariates(), likelihood, top)));
    }

    private boolean isTop(Ascent.Point point) {
      return point.isLevel()
          && point.damping() == 0
          && point.shape() > leastShape
          && point.step().getLInfNorm() < SHORT_STEP * (1 + point.all().getLInfNorm());
    }

    private Reason reasonOfNoTop() {
      return all().highest(start(1)).shape() > leastShape
          ? Reason.NOT_FOUND
          : Reason.NO_RISE_WITH_AGE;
    }

    private Ascent all() {
      return new Ascent(likelihood, Restriction.none(likelihood.parameters()));
    }

    /** The best fit in which no covariate has an effect, or if it has no shape, one with one. */
    private RealVector start(double factor) {
      FitStart fit = FitStart.of(LifeFamily.WEIBULL.standardForm(), pooled);
      double shape = factor * fit.shape();
      RealVector start = new ArrayRealVector(likelihood.parameters());
      start.setEntry(RegressionLikelihood.SHAPE, shape);
      start.setEntry(RegressionLikelihood.OFFSET, fit.offset(shape));
      Ascent.Point highest =
          new Ascent(likelihood, withoutCovariates()).highest(withoutCovariates().free(start));
      return highest.shape() > leastShape ? highest.all() : start;
    }

    private Restriction withoutCovariates() {
      return Restriction.keeping(likelihood.parameters(), IntStream.range(0, 2));
    }

    private RegressionOutcome separated(RealVector direction) {
      Ascent.Point far = all().highest(start(1));
      Ascent nothing = new Ascent(likelihood, withoutCovariates());
      double value = nothing.highest(withoutCovariates().free(far.all())).value();
      List<Separation> separations = new ArrayList<>();
      for (int index = 0; index < data.covariates().size(); index++) {
        double part = direction.getEntry(likelihood.indexOf(index));
        if (Math.abs(part) > NO_PART) {
          separations.add(
              separation(data.covariates().get(index), far, part > 0 ? Edge.INFINITY : Edge.ZERO));
        }
      }
      return new Separated(
          List.copyOf(separations),
          new ChiSquared(Math.max(0, 2 * (far.value() - value)), data.covariates().size()));
    }

    private Separation separation(String covariate, Ascent.Point far, Edge towards) {
      RegressionProfile profile =
          new RegressionProfile(
              likelihood,
              RegressionQuantity.hazardRatio(covariate).placing(likelihood, data.covariates()),
              far.all());
      Side side =
          switch (towards) {
            case ZERO -> Side.ABOVE;
            case INFINITY -> Side.BELOW;
          };
      return new Separation(
          covariate,
          towards,
          confidence -> {
            double errors = Math.max(0, confidence.oneSidedNormalQuantile());
            double limit = Math.exp(profile.fallen(side, far.value() - errors * errors / 2, 1));
            return errors > 0 && limit > 0 && Double.isFinite(limit)
                ? OptionalDouble.of(limit)
                : OptionalDouble.empty();
          });
    }
  }
}
