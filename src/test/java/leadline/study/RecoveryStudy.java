package leadline.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import leadline.history.History;
import leadline.history.VesselHistory;
import leadline.history.VesselRecords;
import leadline.quantity.ReportMonth;
import leadline.quantity.RunningHours;
import leadline.sample.FleetPlan;
import leadline.sample.SampleFleet;
import leadline.sample.SampleRecords;
import leadline.summary.SpringLives;

/**
 * Whether the life of a spring that was put into an invented fleet comes out of its records: fleets
 * of 24 vessels over six years, each from a seed, rebuilt and estimated in memory.
 */
final class RecoveryStudy {

  static final int VESSELS = 24;
  static final int YEARS = 6;

  private static final ReportMonth MONTH = ReportMonth.parse("2024-12");

  private RecoveryStudy() {}

  /** Prints a table; the argument is the number of seeds, from 1. */
  public static void main(String[] arguments) {
    int seeds = Integer.parseInt(arguments[0]);
    print(
        "| scenario | figure | truth | median estimate | profile | vessels | published | none |%n");
    print("|---|---|---|---|---|---|---|---|%n");
    for (Scenario scenario : Scenario.values()) {
      if (arguments.length == 1 || scenario.name().equals(arguments[1])) {
        long begun = System.nanoTime();
        of(scenario, seeds)
            .forEach(
                (name, recovered) ->
                    print("| %s | %s | %s |%n", scenario.words(), name, recovered));
        System.err.printf("%s %.1f s%n", scenario, (System.nanoTime() - begun) / 1e9);
      }
    }
  }

  static Map<String, Recovered> of(Scenario scenario, int seeds) {
    Map<String, Recovered> recovered = new LinkedHashMap<>();
    for (int seed = 1; seed <= seeds; seed++) {
      for (SpringLives.Figure figure : scenario.lives(histories(scenario, seed)).figures()) {
        if (scenario.truth(figure.name()).isPresent()) {
          recovered
              .computeIfAbsent(
                  figure.name(), name -> new Recovered(scenario.truth(name).getAsDouble()))
              .add(figure);
        }
      }
    }
    return recovered;
  }

  static List<VesselHistory> histories(Scenario scenario, int seed) {
    FleetPlan plan = scenario.plan();
    SampleFleet fleet = new SampleFleet(plan, seed);
    List<VesselHistory> histories = new ArrayList<>();
    for (int number = 1; number <= VESSELS; number++) {
      histories.add(
          History.rebuild(
                  scenario.written(records(fleet.vessel(number).records())),
                  plan.catalogue(),
                  RunningHours.ofHours(24),
                  MONTH.end())
              .value());
    }
    return histories;
  }

  static VesselRecords records(SampleRecords records) {
    return new VesselRecords(
        records.vessel(),
        records.machines(),
        records.readings(),
        records.overhauls(),
        records.findings());
  }

  private static void print(String format, Object... figures) {
    System.out.printf(Locale.ROOT, format, figures);
  }
}
