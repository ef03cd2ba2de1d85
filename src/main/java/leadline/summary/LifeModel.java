package leadline.summary;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import leadline.stats.Confidence;
import leadline.stats.FitCheck;
import leadline.stats.FitOutcome.NoFiniteMaximum;
import leadline.stats.FittedLife;
import leadline.stats.KnownShapeFit;
import leadline.stats.LifeData;
import leadline.stats.LifeDistribution;
import leadline.stats.OneSidedLimit;

/** A life distribution, its parameters free or its shape assumed. */
sealed interface LifeModel {

  /** Of a check of fit: its p value has steps of 1 / 20, the least of which rejects at 0.05. */
  int SIMULATIONS = 19;

  int FIRST_DRAW = 1;

  /** Those among which the data may choose. */
  List<Free> FREE = Arrays.stream(LifeDistribution.values()).map(Free::new).toList();

  /** Those to show side by side where the data are too few to choose a shape. */
  List<AssumedShape> ASSUMED = Stream.of(1.0, 1.5, 2.0, 3.0).map(AssumedShape::new).toList();

  /** As published. */
  String word();

  /** Empty where the likelihood has no highest point. */
  Optional<? extends FittedLife> fit(LifeData data);

  /**
   * The p value of a check whether the lives may come from it; empty where they do not tell, or the
   * model is a mere assumption. Those known only from a later age are left out.
   */
  OptionalDouble chanceOfSuchDistance(LifeData data);

  /** With all its parameters fitted. */
  record Free(LifeDistribution distribution) implements LifeModel {

    @Override
    public String word() {
      return distribution.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    @Override
    public Optional<? extends FittedLife> fit(LifeData data) {
      return distribution.fit(data).fit();
    }

    @Override
    public OptionalDouble chanceOfSuchDistance(LifeData data) {
      return FitCheck.of(distribution, data.knownFromNew(), SIMULATIONS, FIRST_DRAW)
              instanceof FitCheck.Checked checked
          ? OptionalDouble.of(checked.p())
          : OptionalDouble.empty();
    }
  }

  /** Weibull with its shape assumed. */
  record AssumedShape(double shape) implements LifeModel {

    @Override
    public String word() {
      return "weibull-shape-" + Double.toString(shape).replaceFirst("\\.0$", "");
    }

    /** Where there is no highest point: the limit of the scale that the lives support. */
    Optional<OneSidedLimit> oneSidedLimit(LifeData data, Confidence confidence) {
      return KnownShapeFit.of(shape, data) instanceof NoFiniteMaximum<?> none
          ? none.limits().apply(confidence)
          : Optional.empty();
    }

    @Override
    public OptionalDouble chanceOfSuchDistance(LifeData data) {
      return OptionalDouble.empty();
    }

    @Override
    public Optional<? extends FittedLife> fit(LifeData data) {
      return KnownShapeFit.of(shape, data).fit();
    }
  }
}
