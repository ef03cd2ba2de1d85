package leadline.summary;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import leadline.fleet.Written;
import leadline.stats.Confidence;
import leadline.stats.FitOutcome.NoFiniteMaximum;
import leadline.stats.FittedLife;
import leadline.stats.KnownShapeFit;
import leadline.stats.LifeData;
import leadline.stats.LifeFamily;
import leadline.stats.LifeFit;
import leadline.stats.OneSidedLimit;

/** A family of life distributions, its shape free or assumed. */
sealed interface LifeModel extends Written {

  /** Empty where the likelihood has no highest point. */
  Optional<? extends FittedLife> fit(LifeData data);

  /** Those between which the data may choose. */
  List<LifeModel> FREE =
      Stream.concat(Stream.of(new AssumedShape(1, "exponential")), Stream.of(Family.values()))
          .toList();

  /** Those to show side by side where the data are too few to choose a shape. */
  List<AssumedShape> ASSUMED =
      Stream.of(1.0, 1.5, 2.0, 3.0)
          .map(shape -> new AssumedShape(shape, "weibull-shape-" + plain(shape)))
          .toList();

  /** With its shape fitted. */
  enum Family implements LifeModel {
    WEIBULL(LifeFamily.WEIBULL),
    LOGNORMAL(LifeFamily.LOGNORMAL),
    LOG_LOGISTIC(LifeFamily.LOG_LOGISTIC);

    private final LifeFamily family;

    Family(LifeFamily family) {
      this.family = family;
    }

    @Override
    public Optional<? extends FittedLife> fit(LifeData data) {
      return LifeFit.of(family, data).fit();
    }
  }

  /** Weibull with its shape assumed; at a shape of 1 the exponential distribution. */
  record AssumedShape(double shape, String word) implements LifeModel {

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

  private static String plain(double shape) {
    return shape == Math.rint(shape) ? Long.toString((long) shape) : Double.toString(shape);
  }
}
