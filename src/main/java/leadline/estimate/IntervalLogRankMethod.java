package leadline.estimate;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import leadline.stats.IntervalLogRank;
import leadline.stats.ObservedInterval;

/** Groups of lives compared whose ends inspections confine to intervals. */
final class IntervalLogRankMethod implements Method {

  private static final int DEALINGS = 9999;
  private static final long START = 1;

  @Override
  public String word() {
    return "interval-log-rank";
  }

  @Override
  public List<String> prints() {
    return List.of("interval_logrank.");
  }

  @Override
  public String reads() {
    return "lower,upper,entry,weight,group; no entry";
  }

  @Override
  public Groups groups() {
    return Groups.COMPARED;
  }

  @Override
  public EstimateResults of(DataFile file, EstimateSettings settings) {
    LogRankMethod.requireGroups(file);
    file.rows().forEach(row -> row.count("weight"));
    Map<String, List<ObservedInterval>> groups = new TreeMap<>();
    file.by(DataFile.GROUP).forEach((group, part) -> groups.put(group, InspectedLives.of(part)));
    IntervalLogRank<String> test = IntervalLogRank.of(groups);
    return LogRankMethod.addTest(
        "interval_logrank",
        test.test(),
        new EstimateResults()
            .words("interval_logrank.groups", List.copyOf(test.excess().keySet()))
            .numbers("interval_logrank.excess", test.excess().values(), Double::doubleValue)
            .number("interval_logrank.p_dealt", test.pByDealing(DEALINGS, START)));
  }
}
