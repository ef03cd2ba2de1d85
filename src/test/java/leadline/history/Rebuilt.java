package leadline.history;

import java.util.List;
import java.util.stream.Stream;
import leadline.fleet.Item;
import leadline.history.OverhaulInterval.Subject;
import leadline.problem.Checked;
import leadline.problem.Problem;

/** A rebuilt history, for tests to ask. */
record Rebuilt(Checked<VesselHistory, Problem> checked) {

  MachineHistory engine() {
    return machine(Ship.ENGINE);
  }

  MachineHistory machine(String machine) {
    return checked.value().machines().stream()
        .filter(history -> history.machine().id().machine().equals(machine))
        .findFirst()
        .orElseThrow();
  }

  Visit visit(String overhaul) {
    return engine().visits().stream()
        .filter(visit -> visit.overhaul().id().overhaul().equals(overhaul))
        .findFirst()
        .orElseThrow();
  }

  List<String> visits() {
    return engine().visits().stream().map(visit -> visit.overhaul().id().overhaul()).toList();
  }

  PartState state(String overhaul, String part) {
    return visit(overhaul).parts().stream()
        .filter(state -> state.part().name().equals(part))
        .findFirst()
        .orElseThrow();
  }

  /** The lives of a part in an item, as {@code origin from entry: observation, end}. */
  List<String> lives(String item, String part) {
    return lives()
        .filter(life -> life.item().label().equals(item) && life.part().name().equals(part))
        .map(Rebuilt::inWords)
        .toList();
  }

  Stream<PartLife> lives() {
    return checked.value().machines().stream().flatMap(machine -> machine.lives().stream());
  }

  List<String> items() {
    return lives().map(PartLife::item).map(Item::label).distinct().sorted().toList();
  }

  /** The known intervals of injectors that an overhaul ended, or, as {@code ...}, none did yet. */
  List<String> intervals(Subject subject) {
    return checked.value().machines().stream()
        .flatMap(machine -> machine.intervals().stream())
        .filter(interval -> interval.component().equals(TestCatalogue.FUEL_INJECTOR))
        .filter(interval -> interval.subject() == subject)
        .map(Rebuilt::inWords)
        .sorted()
        .toList();
  }

  List<String> problems() {
    return checked.problems().stream()
        .map(problem -> problem.kind() + " " + problem.record())
        .toList();
  }

  List<String> sentences() {
    return checked.problems().stream().map(Problem::sentence).toList();
  }

  private static String inWords(OverhaulInterval interval) {
    return interval.length().map(Object::toString).orElse("?")
        + interval.endedBy().map(reason -> " " + reason.word()).orElse(" ...");
  }

  private static String inWords(PartLife life) {
    return "%d %s from %s: %s, %s"
        .formatted(
            life.number(),
            life.origin().word(),
            life.entry(),
            inWords(life.observation()),
            life.endedBy().word());
  }

  private static String inWords(Observation observation) {
    if (observation instanceof Observation.Exact exact) {
      return "failed at " + exact.age();
    }
    if (observation instanceof Observation.Within within) {
      return "failed in (%s, %s]".formatted(within.lower(), within.upper());
    }
    if (observation instanceof Observation.WorkingAt working) {
      return "working at " + working.age();
    }
    return observation instanceof Observation.RejectedAt rejected
        ? "rejected at " + rejected.age()
        : "no age";
  }
}
