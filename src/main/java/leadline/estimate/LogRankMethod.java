package leadline.estimate;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import leadline.stats.ChiSquared;
import leadline.stats.LogRank;
import leadline.stats.SurvivalTally;

/** Groups of lives compared, exact or right-censored, within strata if the file has them. */
final class LogRankMethod implements Method {

  private static final String STRATUM = "stratum";

  @Override
  public String word() {
    return "log-rank";
  }

  @Override
  public List<String> prints() {
    return List.of("logrank.");
  }

  @Override
  public String reads() {
    return "lower,upper,entry,weight,group[,stratum]; no intervals";
  }

  @Override
  public Groups groups() {
    return Groups.COMPARED;
  }

  @Override
  public EstimateResults of(DataFile file, EstimateSettings settings) {
    LogRank<String> test = LogRank.stratified(List.copyOf(strata(file)));
    return addTest(
        "logrank",
        test.test(),
        new EstimateResults()
            .words("logrank.groups", List.copyOf(test.ends().keySet()))
            .numbers("logrank.observed", test.ends().values(), LogRank.Ends::observed)
            .numbers("logrank.expected", test.ends().values(), LogRank.Ends::expected));
  }

  /** A test of no two groups that could be compared has no degree of freedom. */
  static EstimateResults addTest(String name, Optional<ChiSquared> test, EstimateResults results) {
    results
        .number(name + ".chi2", number(test.map(ChiSquared::statistic)))
        .number(name + ".df", test.map(ChiSquared::degreesOfFreedom).orElse(0))
        .number(name + ".p", number(test.map(ChiSquared::upperTail)));
    return test.isPresent() ? results : results.status(name, EstimateResults.Status.INSUFFICIENT);
  }

  private static OptionalDouble number(Optional<Double> value) {
    return value.isPresent() ? OptionalDouble.of(value.get()) : OptionalDouble.empty();
  }

  private static List<Map<String, SurvivalTally<String>>> strata(DataFile file) {
    Map<String, Map<String, SurvivalTally<String>>> strata = new LinkedHashMap<>();
    List<LifeRow> lives = LifeRow.of(file, Set.of(STRATUM));
    requireGroups(file);
    for (LifeRow life : lives) {
      String stratum = life.row().states(STRATUM) ? life.row().word(STRATUM) : "";
      strata
          .computeIfAbsent(stratum, none -> new TreeMap<>())
          .computeIfAbsent(life.row().word(DataFile.GROUP), none -> new SurvivalTally<>())
          .add(KaplanMeierMethod.observed(life, life.entry()), life.row().count("weight"));
    }
    return List.copyOf(strata.values());
  }

  static void requireGroups(DataFile file) {
    List<String> columns = file.header().columns();
    file.header()
        .require(
            Stream.concat(columns.stream(), Stream.of(DataFile.GROUP)).collect(Collectors.toSet()),
            Set.of());
  }
}
