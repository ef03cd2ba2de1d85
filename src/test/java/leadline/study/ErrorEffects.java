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
import leadline.sample.SampleFleet;
import leadline.sample.SampleRecords;
import leadline.summary.SpringLives;

/** What the usual errors do to hours, rates and lives, with the readings judged and without. */
final class ErrorEffects {

  private static final int SEED = 1;

  private ErrorEffects() {}

  static void print(int vessels) {
    FleetPlan clean = plan(ErrorRates.NONE);
    FleetPlan usual = plan(ErrorRates.usual());
    System.out.printf(
        "| records | machine hours | breakdowns per million machine hours | spring: scale, h | spring: failed by 8,000 h, %% |%n|---|---|---|---|---|%n");
    print("without errors", clean, vessels, UnaryOperator.identity());
    print("with the usual errors, readings judged", usual, vessels, UnaryOperator.identity());
    print(
        "with the usual errors, each reading taken that can follow the last one taken",
        usual,
        vessels,
        ErrorEffects::takenInTurn);
  }

  private static void print(
      String words, FleetPlan plan, int vessels, UnaryOperator<VesselRecords> taken) {
    SampleFleet fleet = new SampleFleet(plan, SEED);
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
    Map<String, Double> figures =
        SpringLives.routine(
                injector,
                injector.part("nrv-spring").orElseThrow(),
                PlantedErrorStudy.MONTH,
                histories,
                UnaryOperator.identity())
            .figures()
            .stream()
            .collect(Collectors.toMap(SpringLives.Figure::name, SpringLives.Figure::value));
    System.out.printf(
        Locale.ROOT,
        "| %s | %,.0f | %.2f | %,.0f | %.2f |%n",
        words,
        hours,
        breakdowns / hours * 1e6,
        figures.getOrDefault("scale_h", Double.NaN),
        100 * figures.getOrDefault("failed_by_8000_h_share", Double.NaN));
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
