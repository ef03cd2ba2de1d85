package leadline.summary;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import leadline.stats.Confidence;
import leadline.stats.FitOutcome.NoFiniteMaximum;
import leadline.stats.FittedLife;
import leadline.stats.KnownShapeFit;
import leadline.stats.LifeData;
import leadline.stats.LifeDistribution;
import leadline.stats.OneSidedLimit;

/** A life distribution, its parameters free or its shape assumed. */
sealed interface LifeModel {

  /** Those among which the data may choose. */
  List<Free> FREE = Arrays.stream(LifeDistribution.values()).map(Free::new).toList();

  /** Those to show side by side where the data are too few to choose a shape. */
  List<AssumedShape> ASSUMED = Stream.of(1.0, 1.5, 2.0, 3.0).map(AssumedShape::new).toList();

  /** As published. */
  String word();

  /** Empty where the likelihood has no highest point. */
  Optional<? extends FittedLife> fit(LifeData data);

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
    public Optional<? extends FittedLife> fit(LifeData data) {
      return KnownShapeFit.of(shape, data).fit();
    }
  }
}
