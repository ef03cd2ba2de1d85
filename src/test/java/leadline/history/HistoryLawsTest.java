package leadline.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import leadline.fleet.MachineId;
import leadline.fleet.Position;
import leadline.fleet.ReadingKind;
import leadline.history.OverhaulInterval.Subject;
import leadline.problem.Problem;
import leadline.quantity.Period;
import leadline.quantity.RunningHours;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold of any ship's history, over ships drawn at random. */
class HistoryLawsTest {

  private static final int CUT_OFF = 1400;

  static LongStream drawings() {
    return LongStream.range(0, 60);
  }

  @ParameterizedTest
  @MethodSource("drawings")
  void theOrderOfTheRecordsChangesNothing(long drawing) {
    VesselRecords records = RandomShip.drawn(drawing).records();
    Random random = new Random(drawing);
    VesselRecords shuffled =
        new VesselRecords(
            records.vessel(),
            shuffled(records.machines(), random),
            shuffled(records.readings(), random),
            shuffled(records.overhauls(), random),
            shuffled(records.findings(), random));
    assertEquals(Outcome.of(rebuilt(records)), Outcome.of(rebuilt(shuffled)));
  }

  @ParameterizedTest
  @MethodSource("drawings")
  void noPartGrowsOlderThanItsMachineRan(long drawing) {
    Rebuilt rebuilt = rebuilt(RandomShip.drawn(drawing).records());
    RunningHours ran = ran(rebuilt);
    rebuilt
        .lives()
        .filter(life -> life.origin() != LifeOrigin.HOURS_SINCE_NEW)
        .forEach(life -> assertFalse(age(life).isAbove(ran), life::toString));
  }

  @ParameterizedTest
  @MethodSource("drawings")
  void theLivesOfAPartInAnItemDoNotOverlap(long drawing) {
    // If two overlapped, their hours could add up to more than the machine ran.
    Rebuilt rebuilt = rebuilt(RandomShip.drawn(drawing).records());
    Map<List<Object>, RunningHours> lived = new HashMap<>();
    rebuilt
        .lives()
        .filter(life -> life.origin() != LifeOrigin.HOURS_SINCE_NEW)
        .forEach(
            life ->
                lived.merge(
                    List.<Object>of(life.item(), life.part()), age(life), RunningHours::plus));
    RunningHours ran = ran(rebuilt);
    lived.forEach((part, hours) -> assertFalse(hours.isAbove(ran), part::toString));
  }

  @ParameterizedTest
  @MethodSource("drawings")
  void theLivesOfAPartInAnItemAreNumberedWithoutAGap(long drawing) {
    Map<List<Object>, List<Integer>> numbers =
        rebuilt(RandomShip.drawn(drawing).records())
            .lives()
            .collect(
                Collectors.groupingBy(
                    life -> List.<Object>of(life.item(), life.part()),
                    Collectors.mapping(PartLife::number, Collectors.toList())));
    numbers
        .values()
        .forEach(
            found ->
                assertEquals(
                    Stream.iterate(1, number -> number + 1).limit(found.size()).toList(), found));
  }

  @ParameterizedTest
  @MethodSource("drawings")
  void exposureOfTheMonthsAddsUpToTheWhole(long drawing) {
    MachineHistory engine = rebuilt(RandomShip.drawn(drawing).records()).engine();
    Exposure whole = engine.exposureWithin(days(-100, CUT_OFF));
    RunningHours hours = RunningHours.ZERO;
    RunningHours repaired = RunningHours.ZERO;
    for (int day = -100; day < CUT_OFF; day += 30) {
      Exposure month = engine.exposureWithin(days(day, day + 30));
      hours = hours.plus(month.hours());
      repaired = repaired.plus(month.repaired());
    }
    assertEquals(whole.hours(), hours);
    assertEquals(whole.repaired(), repaired);
    assertFalse(whole.least().isAbove(hours));
    assertFalse(hours.isAbove(whole.most()));
    assertFalse(repaired.isAbove(hours));
  }

  @ParameterizedTest
  @MethodSource("drawings")
  void hoursNeverFallAndStayWithinTheirBounds(long drawing) {
    HourSeries hours = rebuilt(RandomShip.drawn(drawing).records()).engine().hours();
    RunningHours last = RunningHours.ZERO;
    for (int day = 0; day < RandomShip.LAST_DAY; day++) {
      Optional<HourSeries.Bounded> now = hours.at(Ship.endOf(day));
      if (now.isPresent()) {
        assertFalse(last.isAbove(now.get().hours()));
        assertFalse(now.get().lower().isAbove(now.get().hours()));
        assertFalse(now.get().hours().isAbove(now.get().upper()));
        last = now.get().hours();
      }
    }
  }

  @ParameterizedTest
  @MethodSource("drawings")
  void everyOverhaulIsAVisitOrIsReported(long drawing) {
    VesselRecords records = RandomShip.drawn(drawing).records();
    Rebuilt rebuilt = rebuilt(records);
    List<String> reported =
        rebuilt.checked().problems().stream()
            .filter(problem -> problem.kind().equals("overhaul-outside-hours"))
            .map(Problem::record)
            .toList();
    List<String> seen =
        records.overhauls().stream()
            .filter(overhaul -> !overhaul.removedAt().isAfter(Ship.endOf(CUT_OFF)))
            .map(overhaul -> overhaul.id().overhaul())
            .sorted()
            .toList();
    assertEquals(
        seen, Stream.concat(rebuilt.visits().stream(), reported.stream()).sorted().toList());
  }

  @ParameterizedTest
  @MethodSource("drawings")
  void onBothClocksEveryOverhaulOfAPositionEndsOneInterval(long drawing) {
    MachineHistory engine = rebuilt(RandomShip.drawn(drawing).records()).engine();
    long overhauls =
        engine.visits().stream()
            .filter(visit -> visit.overhaul().reason().isOverhaul())
            .filter(visit -> visit.position().isPresent())
            .count();
    for (Subject subject : Subject.values()) {
      assertEquals(
          overhauls,
          engine.intervals().stream()
              .filter(interval -> interval.subject() == subject)
              .filter(interval -> interval.endedBy().isPresent())
              .count());
    }
    assertTrue(
        engine.intervals().stream()
            .flatMap(interval -> interval.length().stream())
            .noneMatch(RunningHours::isNegative));
  }

  @ParameterizedTest
  @MethodSource("drawings")
  void alongAPositionMachineHoursNeverFall(long drawing) {
    Map<Position, List<Visit>> visits =
        rebuilt(RandomShip.drawn(drawing).records()).engine().visits().stream()
            .filter(visit -> visit.position().isPresent())
            .collect(Collectors.groupingBy(visit -> visit.position().orElseThrow()));
    visits
        .values()
        .forEach(
            found ->
                assertEquals(
                    found.stream().map(Visit::machineHours).sorted().toList(),
                    found.stream().map(Visit::machineHours).toList()));
  }

  @ParameterizedTest
  @MethodSource("drawings")
  void livesThatStillRunNeverMakeAFailureAppear(long drawing) {
    List<PartLife> failures = failures(RandomShip.drawn(drawing));
    Ship withSister =
        RandomShip.drawn(drawing)
            .machine("ME2")
            .reading("ME2", ReadingKind.COUNTER, Ship.endOf(0), 0)
            .reading("ME2", ReadingKind.COUNTER, Ship.endOf(CUT_OFF), 9000);
    assertEquals(failures, failures(withSister));
    assertTrue(withSister.rebuiltTo(CUT_OFF).machine("ME2").lives().size() > 0);
  }

  @ParameterizedTest
  @MethodSource("drawings")
  void timeAloneMakesNoFailure(long drawing) {
    // The same records, known up to one cut-off, looked at from a later one.
    VesselRecords all = RandomShip.drawn(drawing).records();
    VesselRecords upTo900 =
        new VesselRecords(
            all.vessel(),
            all.machines(),
            all.readings(),
            all.overhauls().stream()
                .filter(overhaul -> !overhaul.fittedAt().isAfter(Ship.endOf(900)))
                .toList(),
            all.findings());
    assertEquals(failures(rebuilt(upTo900, 900)), failures(rebuilt(upTo900, CUT_OFF)));
  }

  private static List<PartLife> failures(Ship ship) {
    return failures(ship.rebuiltTo(CUT_OFF));
  }

  private static List<PartLife> failures(Rebuilt rebuilt) {
    return rebuilt.lives().filter(life -> life.endedBy() == LifeEnd.FAILED).toList();
  }

  private static Rebuilt rebuilt(VesselRecords records) {
    return rebuilt(records, CUT_OFF);
  }

  private static Rebuilt rebuilt(VesselRecords records, int cutOff) {
    return new Rebuilt(
        History.rebuild(
            records, TestCatalogue.CATALOGUE, RunningHours.ofHours(24), Ship.endOf(cutOff)));
  }

  /** Hours that the engine ran from its first reading to the cut-off. */
  private static RunningHours ran(Rebuilt rebuilt) {
    return rebuilt.engine().hours().exposure(days(-1, CUT_OFF)).hours();
  }

  private static RunningHours age(PartLife life) {
    return life.observation()
        .failedBy()
        .or(() -> life.observation().workedAt())
        .orElse(RunningHours.ZERO);
  }

  private static Period days(int from, int to) {
    return new Period(Ship.endOf(from), Ship.endOf(to));
  }

  private static <T> List<T> shuffled(List<T> list, Random random) {
    List<T> copy = new ArrayList<>(list);
    Collections.shuffle(copy, random);
    return copy;
  }

  /** All of a history that can be compared. */
  private record Outcome(
      MachineId machine,
      Optional<Period> observed,
      List<Visit> visits,
      List<OverhaulInterval> intervals,
      List<PartLife> lives,
      List<Problem> problems) {
    static Outcome of(Rebuilt rebuilt) {
      MachineHistory engine = rebuilt.engine();
      return new Outcome(
          engine.machine().id(),
          engine.observed(),
          engine.visits(),
          engine.intervals(),
          engine.lives(),
          rebuilt.checked().problems());
    }
  }
}
