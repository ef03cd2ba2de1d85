package leadline.summary;

import java.util.Optional;
import java.util.OptionalDouble;
import leadline.quantity.RunningHours;
import leadline.stats.Confidence;
import leadline.stats.FittedLife;
import leadline.stats.LifeFamily;
import leadline.stats.Limits;
import leadline.summary.LifeModel.AssumedShape;

/**
 * A figure as published: with the wider of its limits.
 *
 * @param lower empty where open
 * @param upper empty where open
 */
record HeadlineFigure(
    LifeFigure figure,
    OptionalDouble value,
    OptionalDouble lower,
    OptionalDouble upper,
    LimitsBy limitsBy) {

  /**
   * @param confidence of the profile-likelihood limits
   * @param byVessels limits by bootstrap of vessels; empty where there are none
   */
  static HeadlineFigure of(
      LifeFigure figure, FittedLife fit, Confidence confidence, Optional<Limits> byVessels) {
    Limits likelihood = figure.profileLimits(fit, confidence);
    OptionalDouble value = OptionalDouble.of(figure.value(fit));
    return byVessels
        .map(limits -> LifeBootstrap.around(figure.value(fit), limits))
        .filter(limits -> figure.width(limits) > figure.width(likelihood))
        .map(limits -> of(figure, value, limits, LimitsBy.BOOTSTRAP_OF_VESSELS))
        .orElseGet(() -> of(figure, value, likelihood, LimitsBy.PROFILE_LIKELIHOOD));
  }

  /** A shape that was assumed is no estimate, and has no limits. */
  static HeadlineFigure assumed(LifeFigure figure, AssumedShape model) {
    return new HeadlineFigure(
        figure,
        OptionalDouble.of(model.shape()),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        LimitsBy.NONE);
  }

  /** Where nothing failed: only the side on which the lives set a limit. */
  static HeadlineFigure withoutFailure(LifeFigure figure, AssumedShape model, double leastScale) {
    double limit = figure.value(LifeFamily.WEIBULL, model.shape(), leastScale);
    return switch (figure.behaviour()) {
      case GIVEN_BY_SHAPE -> assumed(figure, model);
      case GROWS_WITH_SCALE ->
          new HeadlineFigure(
              figure,
              OptionalDouble.empty(),
              OptionalDouble.of(limit),
              OptionalDouble.empty(),
              LimitsBy.PROFILE_LIKELIHOOD);
      case FALLS_WITH_SCALE ->
          new HeadlineFigure(
              figure,
              OptionalDouble.of(0),
              OptionalDouble.of(0),
              OptionalDouble.of(limit),
              LimitsBy.PROFILE_LIKELIHOOD);
    };
  }

  /** Whether it speaks of an age greater than this: its own, or one that it is a chance by. */
  boolean isBeyond(RunningHours age) {
    return figure
        .age()
        .map(by -> by.isAbove(age))
        .orElseGet(
            () ->
                figure.behaviour() == LifeFigure.Behaviour.GROWS_WITH_SCALE
                    && value.orElse(0) > age.hours());
  }

  TableRow.Builder in(TableRow.Builder row) {
    return row.with(figure.columns().estimate(), value)
        .with(figure.columns().lower(), lower)
        .with(figure.columns().upper(), upper);
  }

  /** Limits that meet are no limits but an assumption: the exponential's shape. */
  private static HeadlineFigure of(
      LifeFigure figure, OptionalDouble value, Limits limits, LimitsBy limitsBy) {
    boolean isAssumed = limits.lower() == limits.upper();
    return new HeadlineFigure(
        figure,
        value,
        isAssumed ? OptionalDouble.empty() : OptionalDouble.of(limits.lower()),
        isAssumed || Double.isInfinite(limits.upper())
            ? OptionalDouble.empty()
            : OptionalDouble.of(limits.upper()),
        limitsBy);
  }
}
