package leadline.estimate;

import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import leadline.stats.Confidence;
import leadline.stats.Limits;
import leadline.stats.PoissonRate;

/** A rate and its reciprocal, for each row. */
final class RateMethod implements Method {

  private static final Confidence NINETY_FIVE = Confidence.of(0.95);

  @Override
  public String word() {
    return "rate";
  }

  @Override
  public List<String> prints() {
    return List.of("rate.", "mtbf.");
  }

  @Override
  public String reads() {
    return "failures,exposure[,conf][,unit]";
  }

  @Override
  public EstimateResults of(DataFile file, EstimateSettings settings) {
    List<CountRow> rows = CountRow.of(file);
    Function<CountRow, Limits> rate = row -> row.rate().limits(settings.confidence(row.row()));
    Function<CountRow, Limits> midP = row -> row.rate().midPLimits(settings.confidence(row.row()));
    Function<CountRow, Limits> time =
        row -> row.rate().meanTimeLimits(settings.confidence(row.row()));
    return new EstimateResults()
        .numbers("rate.mle", rows, row -> row.rate().rate())
        .numbers("rate.lower", rows, row -> rate.apply(row).lower())
        .numbers("rate.upper", rows, row -> rate.apply(row).upper())
        .numbers("rate.mid_p_lower", rows, row -> midP.apply(row).lower())
        .numbers("rate.mid_p_upper", rows, row -> midP.apply(row).upper())
        .numbers("rate.lower_one_sided95", rows, row -> row.rate().lowerLimit(NINETY_FIVE))
        .numbers("rate.upper_one_sided95", rows, row -> row.rate().upperLimit(NINETY_FIVE))
        .numbers("mtbf.estimate", rows, row -> row.rate().meanTime())
        .numbers("mtbf.time_lower", rows, row -> time.apply(row).lower())
        .numbers("mtbf.time_upper", rows, row -> time.apply(row).upper())
        .numbers("mtbf.failure_lower", rows, endedByEvent(settings, Limits::lower))
        .numbers("mtbf.failure_upper", rows, endedByEvent(settings, Limits::upper));
  }

  /** Undefined without a failure, which alone can end the observation. */
  private static ToDoubleFunction<CountRow> endedByEvent(
      EstimateSettings settings, Function<Limits, Double> limit) {
    return row -> {
      PoissonRate rate = row.rate();
      return rate.meanTimeLimitsEndedByEvent(settings.confidence(row.row()))
          .map(limit)
          .orElse(Double.NaN);
    };
  }
}
