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

  private static final int MOST_STEPS = 400;

  /** Below, over the whole range of ages, no shape is left that a fit could tell from 0. */
  private static final double NO_SHAPE = 1e-5;

  /** Shapes to start from, as multiples of the one that the data suggest. */
  private static final double[] STARTS = {1, 0.2, 4};

  /** Of a parameter: a level way with longer steps leads to infinity. */
  private static final double SHORT_STEP = 1e-4;

  /** Of a direction's greatest component. */
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
    RegressionLikelihood likelihood = new RegressionLikelihood(data);
    Recession recession = new Recession(likelihood, data);
    if (recession.ofShapeAlone().isPresent()) {
      return without(hasExactFailure() ? Reason.ALL_AT_ONE_AGE : Reason.ONE_INSPECTION_AGE);
    }
    return new Ways(likelihood, recession).outcome();
  }

  private boolean hasExactFailure() {
    return pooled.lives().stream().anyMatch(alike -> alike.life() instanceof Life.FailedAt);
  }

  private RegressionOutcome without(Reason reason) {
    return new WithoutMaximum(
        new NoFiniteMaximum<>(reason, confidence -> SurvivalBound.of(pooled, confidence)));
  }

  /** Where a way led. */
  private sealed interface End {}

  private record Top(Ascent.Point point) implements End {}

  private record Beyond(Ascent.Point point, RealVector direction) implements End {}

  private record Nowhere(Reason reason) implements End {}

  private final class Ways {

    private final RegressionLikelihood likelihood;
    private final Recession recession;
    private final double leastShape = NO_SHAPE / pooled.logAges().range();

    Ways(RegressionLikelihood likelihood, Recession recession) {
      this.likelihood = likelihood;
      this.recession = recession;
    }

    RegressionOutcome outcome() {
      boolean hasOnePeak = !pooled.hasDelayedEntry() || pooled.hasOnlyExactFailures();
      List<End> ends =
          DoubleStream.of(hasOnePeak ? new double[] {1} : STARTS)
              .mapToObj(factor -> end(start(factor)))
              .toList();
      for (End end : ends) {
        if (end instanceof Beyond beyond) {
          return beyond(beyond);
        }
      }
      Optional<Top> top =
          ends.stream()
              .filter(Top.class::isInstance)
              .map(Top.class::cast)
              .max(Comparator.comparingDouble(end -> end.point().value()));
      return top.isPresent()
          ? new Fitted(
              new WeibullRegression(data.covariates(), likelihood, top.get().point(), leastShape))
          : without(ends.get(0) instanceof Nowhere nowhere ? nowhere.reason() : Reason.NOT_FOUND);
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

    private End end(RealVector start) {
      Ascent ascent = new Ascent(likelihood, Restriction.none(likelihood.parameters()));
      Ascent.Point here = ascent.at(start);
      for (int step = 0; step < MOST_STEPS; step++) {
        if (here.shape() < leastShape) {
          return new Nowhere(Reason.NO_RISE_WITH_AGE);
        }
        boolean isShort = here.step().getLInfNorm() < SHORT_STEP * (1 + here.all().getLInfNorm());
        if (here.isLevel() && isShort && here.damping() == 0) {
          return new Top(here);
        }
        Optional<RealVector> direction = recession.verified(here.step());
        if (direction.isPresent()) {
          return new Beyond(here, direction.get());
        }
        Optional<Ascent.Point> higher = ascent.higher(here);
        if (higher.isEmpty()) {
          return new Nowhere(Reason.NOT_FOUND);
        }
        here = higher.get();
      }
      return new Nowhere(Reason.NOT_FOUND);
    }

    private RegressionOutcome beyond(Beyond beyond) {
      RealVector direction = beyond.direction();
      if (direction.getEntry(RegressionLikelihood.SHAPE) > NO_PART) {
        return without(Reason.ALL_AT_ONE_AGE);
      }
      Ascent.Point far =
          new Ascent(likelihood, Restriction.none(likelihood.parameters()))
              .highest(beyond.point().free());
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
              far.all(),
              leastShape);
      Side side =
          switch (towards) {
            case ZERO -> Side.ABOVE;
            case INFINITY -> Side.BELOW;
          };
      return new Separation(
          covariate,
          towards,
          confidence -> {
            double errors = confidence.oneSidedNormalQuantile();
            double limit = Math.exp(profile.fallen(side, far.value() - errors * errors / 2, 1));
            return limit > 0 && Double.isFinite(limit)
                ? OptionalDouble.of(limit)
                : OptionalDouble.empty();
          });
    }
  }
}
