package leadline.estimate;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import leadline.stats.ChiSquared;
import leadline.stats.EventHistory;
import leadline.stats.NormalStatistic;
import leadline.stats.ReverseArrangements;
import leadline.stats.TrendTest;
import leadline.stats.Truncation;

/** Whether recurrent failures crowd together or thin out, over all units together. */
final class TrendMethod implements Method {

  @Override
  public String word() {
    return "trend";
  }

  @Override
  public List<String> prints() {
    return List.of("trend.", "laplace.", "mil.");
  }

  @Override
  public String reads() {
    return "unit,time,event[,start][,group]";
  }

  @Override
  public EstimateResults of(DataFile file, EstimateSettings settings) {
    List<EventHistory> units = RecurrentUnit.of(file).stream().map(McfMethod::history).toList();
    TrendTest test = new TrendTest(units, truncation(settings));
    ReverseArrangements reversals = test.reverseArrangements();
    EstimateResults results =
        new EstimateResults()
            .number("trend.n_used", test.events())
            .number("trend.reversals", (double) reversals.count())
            .number("trend.reversals_expected", reversals.expected())
            .number("trend.reversals_p_as_many", number(reversals.pAsMany()))
            .number("trend.reversals_p_as_few", number(reversals.pAsFew()))
            .number("trend.reversals_p_two_sided", number(reversals.pTwoSided()));
    addLaplace(test.laplace(), results);
    addMilitaryHandbook(test.militaryHandbook(), results);
    return results;
  }

  /** The data tell where nothing was chosen: a failure at the end of observation ended it. */
  static Truncation truncation(EstimateSettings settings) {
    List<String> words = settings.words(Setting.TRUNCATION).orElse(List.of("failure"));
    return switch (String.join(",", words)) {
      case "time" -> Truncation.TIME;
      case "failure" -> Truncation.FAILURE;
      default -> throw settings.unusable(Setting.TRUNCATION, "must be time or failure");
    };
  }

  private static void addLaplace(Optional<NormalStatistic> test, EstimateResults results) {
    results
        .number("laplace.u", number(test.map(NormalStatistic::statistic)))
        .number("laplace.p_two_sided", number(test.map(NormalStatistic::twoSided)));
    if (test.isEmpty()) {
      results.status("laplace", EstimateResults.Status.INSUFFICIENT);
    }
  }

  private static void addMilitaryHandbook(Optional<ChiSquared> test, EstimateResults results) {
    Function<Function<ChiSquared, Double>, OptionalDouble> value = of -> number(test.map(of));
    results
        .number("mil.chi2", value.apply(ChiSquared::statistic))
        .number("mil.df", value.apply(chiSquared -> (double) chiSquared.degreesOfFreedom()))
        .number("mil.p_lower_tail", value.apply(ChiSquared::lowerTail))
        .number("mil.p_upper_tail", value.apply(ChiSquared::upperTail))
        .number("mil.p_two_sided", value.apply(ChiSquared::twoSided));
    if (test.isEmpty()) {
      results.status("mil", EstimateResults.Status.INSUFFICIENT);
    }
  }

  private static OptionalDouble number(Optional<Double> value) {
    return value.isPresent() ? OptionalDouble.of(value.get()) : OptionalDouble.empty();
  }
}
