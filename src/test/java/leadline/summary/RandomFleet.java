package leadline.summary;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import leadline.fleet.Action;
import leadline.fleet.Component;
import leadline.fleet.Part;
import leadline.fleet.Reason;
import leadline.history.Condition;
import leadline.history.Inspection;
import leadline.history.Observation;
import leadline.history.PartState;
import leadline.history.VesselHistory;
import leadline.quantity.RunningHours;

/** Vessels with an engine and two compressors each, everything about them drawn at random. */
final class RandomFleet {

  private static final LocalDate START = LocalDate.parse("2021-01-01");
  private static final int DAYS = 1_500;

  private final Random random;
  private boolean opensAll;

  RandomFleet(long seed) {
    this.random = new Random(seed);
  }

  List<VesselHistory> vessels(int count) {
    List<VesselHistory> vessels = new ArrayList<>();
    for (int number = 0; number < count; number++) {
      String vessel = "vessel-" + number;
      opensAll = random.nextInt(4) > 0;
      TestMachine engine =
          TestMachine.engine(
              vessel, "TWS-" + "ABC".charAt(random.nextInt(3)), 4 + random.nextInt(5));
      TestMachine first = TestMachine.compressor(vessel, "ac1", "KM-" + random.nextInt(2));
      TestMachine second = TestMachine.compressor(vessel, "ac2", "KM-" + random.nextInt(2));
      fill(engine, List.of(TestCatalogue.INJECTOR, TestCatalogue.STARTING_VALVE));
      fill(first, List.of(TestCatalogue.COMPRESSOR_VALVE));
      fill(second, List.of(TestCatalogue.COMPRESSOR_VALVE));
      vessels.add(
          new VesselHistory(vessel, List.of(engine.history(), first.history(), second.history())));
    }
    return vessels;
  }

  private void fill(TestMachine machine, List<Component> components) {
    if (random.nextInt(8) > 0) {
      machine.observed(
          day(random.nextInt(DAYS)).toString(), day(DAYS + random.nextInt(40)).toString());
    }
    machine.running(random.nextInt(24), random.nextInt(3));
    for (Component component : components) {
      for (int visit = random.nextInt(40); visit > 0; visit--) {
        machine.visit(
            component,
            day(random.nextInt(DAYS)).toString(),
            pick(Reason.values()),
            component.parts().stream()
                .map(part -> new PartState(part, inspection(part), age(), actions()))
                .toArray(PartState[]::new));
      }
      for (Part part : component.parts()) {
        for (int life = random.nextInt(12); life > 0; life--) {
          machine.life(component, part, observation());
        }
      }
      for (int interval = random.nextInt(60); interval > 0; interval--) {
        machine.interval(
            component, age(), Optional.of(Reason.PLANNED).filter(r -> random.nextBoolean()));
        if (random.nextBoolean()) {
          machine.itemInterval(component, random.nextInt(20_000), pick(ENDS));
        }
      }
    }
  }

  private static final Reason[] ENDS = {Reason.PLANNED, Reason.CONDITION, Reason.BREAKDOWN};

  private Observation observation() {
    RunningHours seen = RunningHours.ofTenths(random.nextInt(120_000));
    return switch (random.nextInt(6)) {
      case 0 -> new Observation.Exact(seen.plus(RunningHours.ofHours(1)));
      case 1, 2 -> new Observation.Within(seen, seen.plus(RunningHours.ofHours(8_000)));
      case 3 -> new Observation.RejectedAt(seen);
      case 4 -> new Observation.NoAge();
      default -> new Observation.WorkingAt(seen);
    };
  }

  private Inspection inspection(Part part) {
    if (opensAll) {
      return TestMachine.foundIn(part, pick(Condition.values()));
    }
    return switch (random.nextInt(6)) {
      case 0 -> new Inspection.NotOpened();
      case 1 -> new Inspection.Unstated();
      case 2 -> new Inspection.NoFinding();
      default -> TestMachine.foundIn(part, pick(Condition.values()));
    };
  }

  private Optional<RunningHours> age() {
    return random.nextInt(5) == 0
        ? Optional.empty()
        : Optional.of(RunningHours.ofTenths(random.nextInt(200_000)));
  }

  private Set<Action> actions() {
    return random.nextBoolean() ? Set.of() : Set.of(pick(Action.values()));
  }

  private <T> T pick(T[] of) {
    return of[random.nextInt(of.length)];
  }

  private static LocalDate day(int number) {
    return START.plusDays(number);
  }
}
