package leadline.sample;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import leadline.fleet.MachineId;
import leadline.history.LifeEnd;
import leadline.history.LifeOrigin;
import leadline.history.LogProblem;
import leadline.history.MachineHistory;
import leadline.history.Observation;
import leadline.history.OverhaulInterval;
import leadline.history.PartLife;
import leadline.problem.Problem;
import leadline.quantity.RunningHours;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Of vessels whose records say all that they say truly, history finds what really happened. */
@Tag("long")
class RebuiltLivesTest {

  private static final FleetPlan PLAN = SampleCatalogue.clean(4);

  /** Ships that all state ages, so that every life has an age, and some that are new. */
  private static final FleetPlan AGED = PLAN.withPractice(new Practice(.05, .05, .3, 1));

  static IntStream drawings() {
    return IntStream.range(0, 40);
  }

  private static RebuiltVessel drawn(FleetPlan plan, int drawing) {
    return RebuiltVessel.of(plan, new SampleFleet(plan, drawing).vessel(1 + drawing % 7));
  }

  /** But for totals of two months that chance makes alike to a tenth. */
  @ParameterizedTest
  @MethodSource("drawings")
  void nothingContradicts(int drawing) {
    assertEquals(List.of(), contradictions(drawn(PLAN, drawing)));
    assertEquals(List.of(), contradictions(drawn(AGED, drawing)));
  }

  private static List<Problem> contradictions(RebuiltVessel vessel) {
    return vessel.checked().problems().stream()
        .filter(problem -> !(problem instanceof LogProblem.TotalRepeated))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("drawings")
  void everyLifeIsATrueOne(int drawing) {
    RebuiltVessel rebuilt = drawn(AGED, drawing);
    Map<LifeKey, TrueLife> truth =
        rebuilt.vessel().lives().stream()
            .collect(Collectors.toMap(LifeKey::of, Function.identity()));
    rebuilt
        .machines()
        .forEach(
            machine ->
                machine
                    .lives()
                    .forEach(
                        life -> {
                          LifeKey key = LifeKey.of(machine.machine().id(), life);
                          assertTrue(truth.containsKey(key), life::toString);
                          TrueLife its = Optional.ofNullable(truth.get(key)).orElseThrow();
                          assertAgrees(its, life);
                        }));
  }

  private record LifeKey(
      MachineId machine, String component, String item, String part, int number) {
    static LifeKey of(TrueLife life) {
      return new LifeKey(life.machine(), life.component(), life.item(), life.part(), life.number());
    }

    static LifeKey of(MachineId machine, PartLife life) {
      return new LifeKey(
          machine, life.component().name(), life.item().label(), life.part().name(), life.number());
    }
  }

  private static void assertAgrees(TrueLife truth, PartLife life) {
    assertEquals(ended(truth), life.endedBy(), () -> truth + " " + life);
    double failed = truth.failure().map(TrueLife.Failure::age).orElse(Double.POSITIVE_INFINITY);
    Observation seen = life.observation();
    if (seen instanceof Observation.Exact exact) {
      // The item comes out within a tenth of an hour of the failure.
      assertTrue(failed <= exact.age().hours(), () -> truth + " " + life);
      assertTrue(failed > exact.age().hours() - .1001, () -> truth + " " + life);
    } else if (seen instanceof Observation.Within within) {
      assertTrue(failed > within.lower().hours(), () -> truth + " " + life);
      assertTrue(failed <= within.upper().hours(), () -> truth + " " + life);
    } else {
      seen.workedAt().ifPresent(age -> assertTrue(failed > age.hours(), () -> truth + " " + life));
    }
    if (!(seen instanceof Observation.NoAge) && seen.failedBy().isPresent()) {
      assertEquals(truth.endedAt(), seen.failedBy().get(), () -> truth + " " + life);
    }
  }

  private static LifeEnd ended(TrueLife truth) {
    return switch (truth.end()) {
      case FAILED_IN_SERVICE, FOUND_FAILED -> LifeEnd.FAILED;
      case REJECTED -> LifeEnd.REJECTED;
      case RENEWED -> LifeEnd.RENEWED;
      case RENEWED_UNOPENED -> LifeEnd.REPLACED_UNOPENED;
      case STILL_FITTED -> LifeEnd.STILL_FITTED;
      case ON_SHELF -> LifeEnd.ON_SHELF;
    };
  }

  @ParameterizedTest
  @MethodSource("drawings")
  void everyTrueLifeInSightIsFound(int drawing) {
    RebuiltVessel rebuilt = drawn(PLAN, drawing);
    long fitted =
        rebuilt.vessel().lives().stream()
            .filter(life -> life.end() != TrueLife.End.ON_SHELF)
            .count();
    assertEquals(
        fitted, rebuilt.lives().filter(life -> life.endedBy() != LifeEnd.ON_SHELF).count());
  }

  @ParameterizedTest
  @MethodSource("drawings")
  void theIntervalsOfANewMachineAddUpToItsPositionsTimesItsHours(int drawing) {
    RebuiltVessel rebuilt = drawn(PLAN.withPractice(Practice.USUAL.withNewInService(1)), drawing);
    for (MachineHistory machine : rebuilt.machines()) {
      PLAN.catalogue().components().stream()
          .filter(machine.machine()::carries)
          .forEach(
              component ->
                  assertEquals(
                      rebuilt.ran(machine).times(machine.machine().positionCount(component)),
                      machine.intervals().stream()
                          .filter(interval -> interval.component().equals(component))
                          .filter(
                              interval -> interval.subject() == OverhaulInterval.Subject.POSITION)
                          .map(interval -> interval.length().orElseThrow())
                          .reduce(RunningHours.ZERO, RunningHours::plus)));
    }
  }

  @ParameterizedTest
  @MethodSource("drawings")
  void thePartsOfItemsThatNeverMoveLiveAsLongTogetherAsTheirMachineRan(int drawing) {
    RebuiltVessel rebuilt = drawn(PLAN.withPractice(Practice.USUAL.withNewInService(1)), drawing);
    rebuilt.vessel().lives().stream()
        .filter(life -> !life.component().equals("fuel-injector"))
        .collect(
            Collectors.groupingBy(
                life -> List.of(life.machine(), life.component(), life.item(), life.part()),
                Collectors.reducing(RunningHours.ZERO, TrueLife::endedAt, RunningHours::plus)))
        .forEach(
            (part, hours) ->
                assertEquals(
                    rebuilt.ran(rebuilt.machine((MachineId) part.get(0))), hours, part::toString));
  }

  /** With every error that ships make. */
  @ParameterizedTest
  @MethodSource("drawings")
  void noPartIsOlderThanItsMachineRanUnlessItsAgeIsStated(int drawing) {
    RebuiltVessel rebuilt = drawn(SampleCatalogue.usual(4), drawing);
    for (MachineHistory machine : rebuilt.machines()) {
      Map<List<Object>, RunningHours> lived = new HashMap<>();
      machine.lives().stream()
          .filter(life -> life.origin() != LifeOrigin.HOURS_SINCE_NEW)
          .forEach(
              life ->
                  lived.merge(
                      List.of(life.component(), life.item(), life.part()),
                      age(life),
                      RunningHours::plus));
      lived.forEach(
          (part, hours) -> assertFalse(hours.isAbove(rebuilt.ran(machine)), part::toString));
    }
  }

  private static RunningHours age(PartLife life) {
    return life.observation()
        .failedBy()
        .or(() -> life.observation().workedAt())
        .orElse(RunningHours.ZERO);
  }

  /** The laws above are of little worth if nothing ever happens on these ships. */
  @Test
  void everyKindOfEndAndObservationComesUp() {
    List<PartLife> lives =
        drawings().boxed().flatMap(drawing -> drawn(AGED, drawing).lives()).toList();
    assertEquals(5, lives.stream().map(life -> life.observation().word()).distinct().count());
    assertEquals(
        LifeEnd.values().length - 1, lives.stream().map(PartLife::endedBy).distinct().count());
  }
}
