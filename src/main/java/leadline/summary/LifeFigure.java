package leadline.summary;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import leadline.quantity.RunningHours;
import leadline.stats.Confidence;
import leadline.stats.FittedLife;
import leadline.stats.LifeFamily;
import leadline.stats.LifeQuantity;
import leadline.stats.Limits;

/**
 * A figure that a life distribution fixes, with the columns in which it is published.
 *
 * @param age by which it is a chance to have failed; none of other figures
 */
record LifeFigure(
    EstimateColumns columns,
    LifeQuantity quantity,
    Behaviour behaviour,
    Optional<RunningHours> age) {

  /**
   * What becomes of the figure as the scale grows; widths of chances by difference, else by ratio.
   */
  enum Behaviour {
    GIVEN_BY_SHAPE,
    GROWS_WITH_SCALE,
    /** A chance: what the quantity, a survival, leaves of 1. */
    FALLS_WITH_SCALE
  }

  private static final String LIMITS =
      "profile likelihood, or bootstrap of vessels where wider (limits_by_vessels), approximate;"
          + " empty where open;";

  static final EstimateColumns SHAPE =
      EstimateColumns.of(
          "shape",
          "1",
          "of Weibull, gamma or log-logistic, or 1 / sigma of the lognormal: above 1, the older"
              + " fail more often",
          LIMITS);
  static final EstimateColumns SCALE =
      EstimateColumns.of(
          "scale_h",
          "h",
          "of the distribution: the age by which 63 % of Weibull lives have failed, half of the"
              + " lognormal and log-logistic",
          LIMITS);
  private static final EstimateColumns B10 =
      EstimateColumns.of("b10_h", "h", "the age by which a tenth have failed", LIMITS);
  static final EstimateColumns FAILED_BY_INTERVAL =
      failedBy("interval", "the policy interval of the component");
  private static final List<RunningHours> AGES =
      Stream.of(4_000L, 8_000L, 12_000L, 16_000L).map(RunningHours::ofHours).toList();

  /** The columns of all figures, in their order. */
  static final List<TableColumn<?>> ALL_COLUMNS =
      Stream.of(
              Stream.of(SHAPE, SCALE, B10),
              AGES.stream().map(LifeFigure::failedBy),
              Stream.of(FAILED_BY_INTERVAL))
          .flatMap(columns -> columns)
          .flatMap(columns -> columns.all().stream())
          .toList();

  /** Shape and scale. */
  static final List<LifeFigure> PARAMETERS =
      List.of(
          new LifeFigure(SHAPE, LifeQuantity.shape(), Behaviour.GIVEN_BY_SHAPE, Optional.empty()),
          new LifeFigure(
              SCALE, LifeQuantity.scale(), Behaviour.GROWS_WITH_SCALE, Optional.empty()));

  /**
   * All figures of a part.
   *
   * @param interval the policy interval of its component
   */
  static List<LifeFigure> all(RunningHours interval) {
    return Stream.of(
            PARAMETERS.stream(),
            Stream.of(
                new LifeFigure(
                    B10, LifeQuantity.quantile(0.1), Behaviour.GROWS_WITH_SCALE, Optional.empty())),
            AGES.stream().map(age -> failedBy(failedBy(age), age)),
            Stream.of(failedBy(FAILED_BY_INTERVAL, interval)))
        .flatMap(figures -> figures)
        .toList();
  }

  /** The chance to have failed by an age. */
  static LifeFigure failedBy(EstimateColumns columns, RunningHours age) {
    return new LifeFigure(
        columns,
        LifeQuantity.survivalAt(age.hours()),
        Behaviour.FALLS_WITH_SCALE,
        Optional.of(age));
  }

  double value(FittedLife fit) {
    return of(fit.estimate(quantity));
  }

  /** In a distribution of the family. */
  double value(LifeFamily family, double shape, double scale) {
    return of(quantity.in(family, shape, scale));
  }

  Limits profileLimits(FittedLife fit, Confidence confidence) {
    Limits limits = fit.profileLimits(quantity, confidence);
    return switch (behaviour) {
      case GIVEN_BY_SHAPE, GROWS_WITH_SCALE -> limits;
      case FALLS_WITH_SCALE -> new Limits(of(limits.upper()), of(limits.lower()));
    };
  }

  /** Of limits of the figure; infinite where they are open. */
  double width(Limits limits) {
    return switch (behaviour) {
      case GIVEN_BY_SHAPE, GROWS_WITH_SCALE -> limits.upper() / limits.lower();
      case FALLS_WITH_SCALE -> limits.upper() - limits.lower();
    };
  }

  private double of(double number) {
    return behaviour == Behaviour.FALLS_WITH_SCALE ? 1 - number : number;
  }

  static EstimateColumns failedBy(RunningHours age) {
    return failedBy(age + "_h", age + " hours since new");
  }

  private static EstimateColumns failedBy(String name, String age) {
    return EstimateColumns.of(
        "failed_by_" + name + "_share",
        "1",
        "chance to have failed by " + age + ", were no other part to end its service first",
        LIMITS);
  }
}
