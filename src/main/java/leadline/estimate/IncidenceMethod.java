package leadline.estimate;

import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import leadline.stats.CumulativeIncidence;
import leadline.stats.ObservedTime;
import leadline.stats.SurvivalTally;

/** The shares of lives ended by each of several causes that compete to end them. */
final class IncidenceMethod implements Method {

  @Override
  public String word() {
    return "incidence";
  }

  @Override
  public List<String> prints() {
    return List.of("incidence.");
  }

  @Override
  public String reads() {
    return "time,cause[,entry][,weight][,group]";
  }

  @Override
  public EstimateResults of(DataFile file, EstimateSettings settings) {
    file.header().require(Set.of("time", "cause"), Set.of("entry", "weight"));
    SurvivalTally<String> tally = new SurvivalTally<>();
    TreeSet<Double> ends = new TreeSet<>();
    SortedSet<String> causes = new TreeSet<>();
    for (DataRow row : file.rows()) {
      tally.add(observed(row), row.header().has("weight") ? weight(row) : 1);
      if (row.states("cause")) {
        ends.add(row.notNegative("time"));
        causes.add(row.word("cause"));
      }
    }
    CumulativeIncidence<String> incidence = CumulativeIncidence.of(tally);
    List<CumulativeIncidence.Shares<String>> shares =
        ends.stream().map(end -> incidence.at(end).orElseThrow()).toList();
    EstimateResults results =
        new EstimateResults()
            .numbers("incidence.time", ends, Double::doubleValue)
            .numbers("incidence.surv", shares, CumulativeIncidence.Shares::surviving);
    for (String cause : causes) {
      results.numbers("incidence.by." + cause, shares, share -> share.endedBy(cause));
    }
    return results;
  }

  private static long weight(DataRow row) {
    if (row.count("weight") == 0) {
      throw row.impossible("weight", "must be 1 or more");
    }
    return row.count("weight");
  }

  private static ObservedTime<String> observed(DataRow row) {
    double time = row.notNegative("time");
    ObservedTime<String> observed =
        row.states("cause")
            ? ObservedTime.ended(time, row.word("cause"))
            : ObservedTime.censored(time);
    if (!row.states("entry") || row.notNegative("entry") == 0) {
      return observed;
    }
    if (row.notNegative("entry") >= time) {
      throw row.impossible("entry", "not before the end of the life: " + row.word("entry"));
    }
    return observed.enteredAt(row.notNegative("entry"));
  }
}
