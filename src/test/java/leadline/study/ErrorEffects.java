package leadline.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import leadline.fleet.Component;
import leadline.fleet.MachineEntry;
import leadline.fleet.MachineId;
import leadline.fleet.Reading;
import leadline.fleet.ReadingKind;
import leadline.fleet.Reason;
import leadline.history.History;
import leadline.history.MachineHistory;
import leadline.history.VesselHistory;
import leadline.history.VesselRecords;
import leadline.quantity.RunningHours;
import leadline.sample.ErrorRates;
import leadline.sample.FleetPlan;
import leadline.sample.RecordError;
import leadline.sample.SampleFleet;
import leadline.sample.SampleRecords;
import leadline.summary.SpringLives;

/** What the usual errors do to hours, rates and lives, with the readings judged and without. */
final class ErrorEffects {

  private static final int SEEDS = 12;

  private final FleetPlan clean = plan(ErrorRates.NONE);
  private final int vessels;

  ErrorEffects(int vessels) {
    this.vessels = vessels;
  }

  /** Of a fleet: machine hours, breakdowns per million of them, and the springs' lives. */
  private record Figures(double hours, double rate, double scale, double failed) {

    void print(String words) {
      System.out.printf(
          Locale.ROOT, "| %s | %,.0f | %.2f | %,.0f | %.2f |%n", words, hours, rate, scale, failed);
    }
  }

  /** One fleet in full, then how much longer springs seem to last in many. */
  void print() {
    FleetPlan usual = plan(ErrorRates.usual());
    System.out.printf(
        "| records | machine hours | breakdowns per million machine hours | spring: scale, h | spring: failed by 8,000 h, %% |%n|---|---|---|---|---|%n");
    figures(clean, 1, UnaryOperator.identity()).print("without errors");
    figures(usual, 1, UnaryOperator.identity()).print("with the usual errors, readings judged");
    figures(usual, 1, ErrorEffects::takenInTurn)
        .print("with the usual errors, each reading taken that can follow the last one taken");
    System.out.printf(
        "%n| errors, as often as usual | spring's scale, %% longer | standard error |%n|---|---|---|%n");
    double[] without = scales(clean);
    printLonger("all together", scales(usual), without);
    for (RecordError kind : RecordError.values()) {
      printLonger(
          "`" + kind.word() + "` alone",
          scales(plan(ErrorRates.NONE.with(kind, kind.usual()))),
          without);
    }
  }

  private double[] scales(FleetPlan plan) {
    return IntStream.rangeClosed(1, SEEDS)
        .mapToDouble(seed -> figures(plan, seed, UnaryOperator.identity()).scale())
        .toArray();
  }

  private static void printLonger(String words, double[] with, double[] without) {
    double[] longer =
        IntStream.range(0, SEEDS).mapToDouble(i -> 100 * (with[i] / without[i] - 1)).toArray();
    double mean = DoubleStream.of(longer).average().orElseThrow();
    double squares = DoubleStream.of(longer).map(x -> (x - mean) * (x - mean)).sum();
    System.out.printf(
        Locale.ROOT,
        "| %s | %.1f | %.1f |%n",
        words,
        mean,
        Math.sqrt(squares / (SEEDS - 1) / SEEDS));
  }

  private Figures figures(FleetPlan plan, int seed, UnaryOperator<VesselRecords> taken) {
    SampleFleet fleet = new SampleFleet(plan, seed);
    List<VesselHistory> histories = new ArrayList<>();
    for (int number = 1; number <= vessels; number++) {
      SampleRecords records = fleet.vessel(number).records();
      histories.add(
          History.rebuild(
                  taken.apply(RecoveryStudy.records(records)),
                  plan.catalogue(),
                  StudiedVessel.TOLERANCE,
                  PlantedErrorStudy.MONTH.end())
              .value());
    }
    List<MachineHistory> machines =
        histories.stream().flatMap(vessel -> vessel.machines().stream()).toList();
    double hours =
        machines.stream()
            .flatMap(machine -> machine.observed().map(machine::exposureWithin).stream())
            .mapToDouble(exposure -> exposure.hours().hours())
            .sum();
    long breakdowns =
        machines.stream()
            .flatMap(machine -> machine.visits().stream())
            .filter(visit -> visit.overhaul().reason() == Reason.BREAKDOWN)
            .count();
    Component injector = plan.catalogue().components().get(0);
    Map<String, Double> springs =
        SpringLives.routine(
                injector,
                injector.part("nrv-spring").orElseThrow(),
                PlantedErrorStudy.MONTH,
                histories,
                UnaryOperator.identity())
            .figures()
            .stream()
            .collect(Collectors.toMap(SpringLives.Figure::name, SpringLives.Figure::value));
    return new Figures(
        hours,
        breakdowns / hours * 1e6,
        springs.getOrDefault("scale_h", Double.NaN),
        100 * springs.getOrDefault("failed_by_8000_h_share", Double.NaN));
  }

  /**
   * As one would without looking ahead: no figure is mended, and one wrong figure may cost many.
   */
  private static VesselRecords takenInTurn(VesselRecords records) {
    Map<MachineId, Optional<Integer>> digits =
        records.machines().stream()
            .collect(Collectors.toMap(MachineEntry::id, MachineEntry::counterDigits));
    Map<MachineId, Reading> last = new HashMap<>();
    List<Reading> taken = new ArrayList<>();
    records.readings().stream()
        .sorted(Comparator.comparing(Reading::at).thenComparing(Reading::kind))
        .forEach(
            reading -> {
              Optional<Reading> before = Optional.ofNullable(last.get(reading.machine()));
              if (before.isEmpty()
                  || follows(
                      before.get(),
                      reading,
                      digits.getOrDefault(reading.machine(), Optional.empty()))) {
                taken.add(reading);
                last.put(reading.machine(), reading);
              }
            });
    return new VesselRecords(
        records.vessel(), records.machines(), taken, records.overhauls(), records.findings());
  }

  private static boolean follows(Reading before, Reading reading, Optional<Integer> digits) {
    if (reading.kind() == ReadingKind.REPLACED) {
      return true;
    }
    RunningHours most =
        RunningHours.ofTenths(
            RunningHours.elapsedBetween(before.at(), reading.at()).tenths() * 25 / 24);
    RunningHours run =
        reading.kind() == ReadingKind.TOTAL || before.kind() == ReadingKind.TOTAL
            ? reading.hours()
            : reading.hours().minus(before.hours());
    if (run.isNegative() && digits.isPresent()) {
      run = run.plus(RunningHours.ofHours(Math.round(Math.pow(10, digits.get()))));
    }
    return !run.isNegative() && !run.isAbove(most);
  }

  private static FleetPlan plan(ErrorRates errors) {
    return PlantedErrorStudy.plan(errors).withComponents(Set.of("fuel-injector"));
  }
}
