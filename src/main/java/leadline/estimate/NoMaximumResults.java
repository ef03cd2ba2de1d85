package leadline.estimate;

import java.math.BigDecimal;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import leadline.estimate.EstimateResults.Status;
import leadline.stats.Confidence;
import leadline.stats.FitOutcome.NoFiniteMaximum;
import leadline.stats.FitOutcome.Reason;
import leadline.stats.OneSidedLimit;

/** In place of a fit that does not exist: why, and the limit that the data support. */
final class NoMaximumResults {

  /** One-sided limits are printed at this level, and at the one that the user chose. */
  private static final Confidence ONE_SIDED = Confidence.of(0.95);

  private NoMaximumResults() {}

  /**
   * @param scale the name of the distribution's scale
   */
  static EstimateResults of(NoFiniteMaximum<?> none, String scale, Confidence confidence) {
    EstimateResults results =
        new EstimateResults()
            .word("status", status(none.reason()).word())
            .word("reason", none.reason().name().toLowerCase(Locale.ROOT).replace('_', '-'));
    for (Confidence level : levels(confidence)) {
      none.limits()
          .apply(level)
          .ifPresent(limit -> results.addAll("", limit(limit, scale, percent(level))));
    }
    return results;
  }

  /** The usual level, and the one that the user chose. */
  static Set<Confidence> levels(Confidence chosen) {
    return new LinkedHashSet<>(List.of(ONE_SIDED, chosen));
  }

  /** As in {@code scale_lower95_one_sided}. */
  static String percent(Confidence confidence) {
    return BigDecimal.valueOf(confidence.level())
        .movePointRight(2)
        .stripTrailingZeros()
        .toPlainString();
  }

  private static EstimateResults limit(OneSidedLimit limit, String scale, String percent) {
    EstimateResults results = new EstimateResults();
    if (limit instanceof OneSidedLimit.ScaleAtLeast least) {
      results.number(scale + "_lower" + percent + "_one_sided", least.scale());
    } else if (limit instanceof OneSidedLimit.ScaleAtMost most) {
      results.number(scale + "_upper" + percent + "_one_sided", most.scale());
    } else if (limit instanceof OneSidedLimit.SurvivalAtLeast least) {
      results.numbers(
          "age_and_survival_lower" + percent + "_one_sided", least.age(), least.share());
    } else if (limit instanceof OneSidedLimit.SurvivalAtMost most) {
      results.numbers("age_and_survival_upper" + percent + "_one_sided", most.age(), most.share());
    }
    return results;
  }

  private static Status status(Reason reason) {
    return switch (reason) {
      case NO_FAILURE, NO_SURVIVAL, ONE_INSPECTION_AGE -> Status.INSUFFICIENT;
      case ALL_AT_ONE_AGE, NOT_FOUND -> Status.NO_FINITE_MAXIMUM;
      case NO_RISE_WITH_AGE -> Status.BOUNDARY;
    };
  }
}
