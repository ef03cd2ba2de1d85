package leadline.estimate;

import java.util.List;
import java.util.OptionalDouble;
import leadline.stats.Confidence;
import leadline.stats.EventHistory;
import leadline.stats.Limits;
import leadline.stats.PoissonRate;
import leadline.stats.PowerLaw;
import leadline.stats.PowerLawGivenCounts;
import leadline.stats.Truncation;

/** The power-law process of recurrent failures, units sharing one. */
final class PowerLawMethod implements Method {

  private static final int DRAWS = 9999;
  private static final long START = 1;

  @Override
  public String word() {
    return "power-law";
  }

  @Override
  public List<String> prints() {
    return List.of("crow.");
  }

  @Override
  public String reads() {
    return "unit,time,event[,start][,group]";
  }

  @Override
  public EstimateResults of(DataFile file, EstimateSettings settings) {
    List<EventHistory> units = RecurrentUnit.of(file).stream().map(McfMethod::history).toList();
    EstimateResults results =
        new EstimateResults()
            .number("crow.n", units.stream().mapToInt(unit -> unit.events().size()).sum());
    PowerLaw.Fit fit = PowerLaw.fit(units);
    if (fit instanceof PowerLaw.Unfit unfit) {
      addLimits(results.status("crow", status(unfit)), units, settings);
    } else if (fit instanceof PowerLaw.Fitted fitted) {
      addFit(fitted, units, results);
    }
    Truncation truncation = TrendMethod.truncation(settings);
    PowerLawGivenCounts.of(units, truncation)
        .ifPresent(exact -> addExact(exact, units, settings, results));
    return results;
  }

  /** Of the events expected of all units in their time, whatever the shape; of the shape. */
  private static void addLimits(
      EstimateResults results, List<EventHistory> units, EstimateSettings settings) {
    PoissonRate events =
        new PoissonRate(units.stream().mapToInt(unit -> unit.events().size()).sum(), 1);
    for (Confidence level : NoMaximumResults.levels(settings.confidence())) {
      String end = NoMaximumResults.percent(level) + "_one_sided";
      results
          .number("crow.expected_events_lower" + end, events.lowerLimit(level))
          .number("crow.expected_events_upper" + end, events.upperLimit(level));
      PowerLaw.shapeAtMost(units, level)
          .ifPresent(shape -> results.number("crow.beta_upper" + end, shape));
    }
  }

  private static EstimateResults.Status status(PowerLaw.Unfit unfit) {
    return switch (unfit) {
      case NO_EVENT -> EstimateResults.Status.INSUFFICIENT;
      case SHAPE_WITHOUT_BOUND -> EstimateResults.Status.NO_FINITE_MAXIMUM;
      case SHAPE_TOWARDS_ZERO -> EstimateResults.Status.BOUNDARY;
    };
  }

  private static void addFit(
      PowerLaw.Fitted fit, List<EventHistory> units, EstimateResults results) {
    results
        .number("crow.beta_mle", fit.shape())
        .number("crow.lambda_mle", fit.lambda())
        .number("crow.log_lambda_mle", fit.logLambda())
        .number("crow.loglik", fit.logLikelihood())
        .number("crow.se_log_beta", fit.logShapeStandardError());
    OptionalDouble end = commonEnd(units);
    if (end.isPresent()) {
      results.number("crow.intensity_at_T", fit.intensityAt(end.getAsDouble()));
    }
  }

  private static void addExact(
      PowerLawGivenCounts exact,
      List<EventHistory> units,
      EstimateSettings settings,
      EstimateResults results) {
    for (Confidence level : NoMaximumResults.levels(settings.confidence())) {
      Limits limits = exact.shapeLimits(level);
      results.limits("crow.beta_chi2_" + NoMaximumResults.percent(level), limits);
    }
    results
        .number("crow.beta_unbiased", exact.unbiasedShape())
        .number("crow.lambda_with_unbiased_beta", exact.lambdaOfUnbiasedShape())
        .number("crow.cramer_von_mises", exact.cramerVonMises())
        .number("crow.cramer_von_mises_p", exact.cramerVonMisesP(DRAWS, START));
    OptionalDouble end = commonEnd(units);
    if (end.isPresent()) {
      results.number(
          "crow.mtbf_at_T_unbiased_beta", exact.meanTimeOfUnbiasedShapeAt(end.getAsDouble()));
    }
  }

  /** Where all units end at one age, which the others' figures at the end then mean. */
  private static OptionalDouble commonEnd(List<EventHistory> units) {
    double[] ends = units.stream().mapToDouble(EventHistory::end).distinct().toArray();
    return ends.length == 1 ? OptionalDouble.of(ends[0]) : OptionalDouble.empty();
  }
}
