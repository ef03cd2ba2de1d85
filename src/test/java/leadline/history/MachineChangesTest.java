package leadline.history;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import leadline.fleet.Action;
import leadline.fleet.Cells;
import leadline.fleet.FoundWord;
import leadline.fleet.MachineEntry;
import leadline.fleet.MachineLayout;
import leadline.fleet.OverhaulLayout;
import leadline.fleet.ReadingKind;
import leadline.fleet.RecordKind;
import leadline.fleet.SourcedRow;
import leadline.history.OverhaulInterval.Subject;
import leadline.problem.Checked;
import leadline.problem.Problem;
import leadline.quantity.Period;
import leadline.quantity.RunningHours;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * An engine that was re-rated, or replaced, on day 1000, or left the fleet for a while. It ran ten
 * hours a day, so 9,990 h by the end of day 999, which is when day 1000 starts.
 */
class MachineChangesTest {

  private static final Instant CHANGE = Ship.endOf(999);
  private static final String RERATED = Ship.MODEL + "-R";

  /** The engine's rows; new on day 0 and re-rated on day 1000. */
  private static Ship rerated() {
    return Ship.newOnDayZero().engine(model(RERATED), from(1000), newOn(0));
  }

  /** A new engine, new on day 1000, whose counter showed 10 h that night. */
  private static Ship replaced(String model) {
    return new Ship()
        .engine(newOn(0))
        .engine(model(model), from(1000), newOn(1000))
        .counter(0, 0)
        .counter(999, 9_990)
        .counter(1000, 10)
        .counter(2000, 10_010);
  }

  /**
   * Injector 1/1 was overhauled at 5,000 h and, 10,000 h later, at 15,000 h; the others never, from
   * new to 20,000 h.
   */
  @Test
  void partsOfAReratedMachineKeepTheirHours() {
    Rebuilt ship = rerated().overhaul("O1", 500).overhaul("O2", 1500).rebuilt();

    assertEquals(1, ship.checked().value().machines().size());
    assertEquals(
        List.of("10000 planned", "20000 ...", "20000 ...", "20000 ...", "5000 ...", "5000 planned"),
        ship.intervals(Subject.POSITION));
    assertEquals(List.of(), ship.problems());
  }

  /**
   * The former model has the 9,990 h until the change, the overhaul in them and its interval; the
   * later one the other 10,010 h, and what ended or still ran in them: 10,000 h from the overhaul
   * at 5,000 h to the one at 15,000 h, the 5,000 h since, and 20,000 h at each other position.
   */
  @Test
  void whatHappenedToAReratedMachineCountsForTheModelItThenWas() {
    MachineHistory engine = rerated().overhaul("O1", 500).overhaul("O2", 1500).rebuilt().engine();
    MachineHistory former = engine.byModel().get(0);
    MachineHistory later = engine.byModel().get(1);

    assertEquals(2, engine.byModel().size());
    assertModel(Ship.MODEL, new Period(Ship.endOf(0), CHANGE), 9_990, "O1", former);
    assertModel(RERATED, new Period(CHANGE, Ship.endOf(2000)), 10_010, "O2", later);
    assertEquals(List.of(5_000L), positionIntervals(former));
    assertEquals(List.of(5_000L, 10_000L, 20_000L, 20_000L, 20_000L), positionIntervals(later));
    assertEquals(List.of(), former.positions());
    assertEquals(engine.positions(), later.positions());
    assertEquals(
        engine.lives().size(), former.lives().size() + later.lives().size(), "each life once");
  }

  /**
   * S1 went in on day 500 and came out on day 1500, 10,000 h later; it is one item under both
   * models, and on the engine that is still of the former one.
   */
  @Test
  void anItemIsTheSameBeforeAndAfterTheReRating() {
    Rebuilt ship =
        rerated()
            .machine("ME2")
            .reading("ME2", ReadingKind.COUNTER, Ship.endOf(0), 0)
            .reading("ME2", ReadingKind.COUNTER, Ship.endOf(2000), 20_000)
            .overhaul("O1", 500, Ship.fitted("S1"))
            .finding("O1", "nozzle", Ship.opened(FoundWord.WORN, Action.RENEWED))
            .overhaul("O2", 1500, Ship.removed("S1"), Ship.fitted("S2"))
            .overhaul("O3", 1600, row -> row.with(OverhaulLayout.MACHINE, "ME2"), Ship.fitted("S1"))
            .rebuilt();

    assertEquals(
        List.of("1 unknown from 0: no age, still-fitted"), ship.lives("S1", "nozzle"), "S1");
    assertEquals(List.of(), ship.problems());
  }

  /**
   * The new engine's injectors were new on day 1000, at 10 h on its counter; 1/1 was overhauled
   * 5,000 h later, on day 1500. What was still fitted on the old engine is censored at 9,990 h, or
   * 4,990 h after its overhaul on day 500.
   */
  @Test
  void aMachineThatReplacesAnotherStartsAnew() {
    Rebuilt ship = replaced("QX-70").overhaul("O1", 500).overhaul("O2", 1500).rebuilt();

    List<MachineHistory> engines = ship.checked().value().machines();
    assertEquals(2, engines.size());
    assertModel(Ship.MODEL, new Period(Ship.endOf(0), CHANGE), 9_990, "O1", engines.get(0));
    assertModel(
        "QX-70", new Period(Ship.endOf(1000), Ship.endOf(2000)), 10_000, "O2", engines.get(1));
    assertEquals(
        List.of(4_990L, 5_000L, 9_990L, 9_990L, 9_990L), positionIntervals(engines.get(0)));
    assertEquals(
        List.of(5_000L, 5_000L, 10_000L, 10_000L, 10_000L), positionIntervals(engines.get(1)));
    assertEquals(List.of(), ship.problems());
  }

  @Test
  void aMachineOfTheSameModelMayReplaceAnother() {
    assertEquals(
        List.of(9_990L, 10_000L),
        replaced(Ship.MODEL).rebuilt().checked().value().machines().stream()
            .map(machine -> machine.exposureWithin(new Period(Ship.endOf(0), Ship.endOf(2000))))
            .map(exposure -> exposure.hours().tenths() / 10)
            .toList());
  }

  /** Without the day in service, another number of cylinders shows that it is another engine. */
  @Test
  void aMachineOfAnotherSizeIsAnotherMachine() {
    Ship ship =
        Ship.newOnDayZero()
            .engine(from(1000), row -> row.with(MachineLayout.CYLINDERS, 3L))
            .overhaul("O1", 500);

    assertEquals(
        List.of(2, 3),
        ship.rebuilt().checked().value().machines().stream()
            .map(machine -> machine.machine().cylinders())
            .toList());
  }

  /**
   * S1 left the old engine on day 500, at 5,000 h, and went into the new one, of the same model, on
   * day 1500; opened there on day 1800, 3,000 h later, its nozzle was sound.
   */
  @Test
  void anItemOfTheOldMachineIsFollowedOnTheNewOne() {
    Rebuilt ship =
        replaced(Ship.MODEL)
            .overhaul("O1", 500, Ship.removed("S1"), Ship.fitted("S2"))
            .overhaul("O2", 1500, Ship.removed("S3"), Ship.fitted("S1"))
            .overhaul("O3", 1800, Ship.removed("S1"), Ship.fitted("S1"))
            .finding("O3", "nozzle", Ship.opened(FoundWord.SOUND, Action.NONE))
            .rebuilt();

    assertEquals(
        List.of("1 new from 0: working at 8000, still-fitted"), ship.lives("S1", "nozzle"));
  }

  /** The first moment of day 1000 belongs to the engine before, as do events on day 999. */
  @Test
  void anOverhaulOnTheDayOfTheChangeIsOfTheNewMachine() {
    Rebuilt ship = replaced("QX-70").overhaul("O1", 999).overhaul("O2", 1001).rebuilt();

    assertEquals(
        List.of("O1", "O2"),
        ship.checked().value().machines().stream()
            .flatMap(machine -> machine.visits().stream())
            .map(visit -> visit.overhaul().id().overhaul())
            .toList());
    assertEquals(
        List.of(1, 2),
        ship.checked().value().machines().stream()
            .map(machine -> machine.visits().get(0).overhaul().machine().succession())
            .toList());
  }

  /** Of both rows, or of either, the day in service is missing. */
  @Test
  void anotherModelWithoutTheDayInServiceIsPresumedReRatedAndAsked() {
    Rebuilt ship = Ship.newOnDayZero().engine(model(RERATED), from(1000)).rebuilt();

    assertEquals(1, ship.checked().value().machines().size());
    assertEquals(List.of("machine-changed ME " + Ship.day(1000)), ship.problems());
    assertEquals(
        List.of(
            "The register has ME as model QX-60 to 2022-09-26 and as model QX-60-R from then on, and"
                + " does not say of both when the machine was new. It is taken for one machine,"
                + " whose parts keep their hours. Send both rows of machines with in_service_on:"
                + " the same day if it was re-rated, each its own if it was replaced."),
        ship.sentences());
  }

  @Test
  void aChangeBeforeTheFirstReadingIsNotAsked() {
    Ship ship =
        new Ship()
            .engine()
            .engine(model(RERATED), from(1000))
            .counter(1100, 11_000)
            .counter(2000, 20_000);

    assertEquals(List.of(), ship.rebuilt().problems());
    assertEquals(RERATED, ship.rebuilt().engine().machine().model());
  }

  /** Both rows hold from the start: the later one corrects the model. */
  @Test
  void anotherModelFromTheSameDayIsACorrection() {
    Ship ship = Ship.newOnDayZero().engine(model(RERATED), newOn(0));

    assertEquals(List.of(RERATED), models(ship));
    assertEquals(new Census.Count(1, 0, 1, 0), machineRows(ship));
  }

  /** The later row says from when on, of the same machine: it corrects the earlier one. */
  @Test
  void anotherFirstDayOfTheSameModelIsACorrection() {
    Ship ship = Ship.newOnDayZero().engine(from(1000), newOn(0));

    assertEquals(
        Optional.of(new Period(CHANGE, Ship.endOf(2000))), ship.rebuilt().engine().observed());
    assertEquals(new Census.Count(1, 0, 1, 0), machineRows(ship));
  }

  @Test
  void eachPeriodIsACurrentRow() {
    assertEquals(new Census.Count(2, 0, 0, 0), machineRows(rerated()));
    assertEquals(
        new Census.Count(2, 1, 1, 0),
        machineRows(rerated().engine(newOn(0)).engine(model("QX-61"), from(1000), newOn(0))));
  }

  @Test
  void aMachineMayBeReRatedAndBack() {
    Ship ship = rerated().engine(from(1500), newOn(0)).overhaul("O1", 1700);

    assertEquals(List.of(Ship.MODEL, RERATED, Ship.MODEL), models(ship));
    assertEquals(
        List.of(9_990L, 5_000L, 5_010L),
        ship.rebuilt().engine().byModel().stream()
            .map(stretch -> stretch.exposureWithin(new Period(Ship.endOf(0), Ship.endOf(2000))))
            .map(exposure -> exposure.hours().tenths() / 10)
            .toList());
  }

  /**
   * Sold on day 600 and bought back on day 800: the 6,000 h before are observed and the 12,000 h
   * from its first reading after. What was overhauled between does not count, and nobody knows what
   * else was: of the intervals after the purchase none has a known start.
   */
  @Test
  void whatHappenedWhileAMachineWasAwayIsUnknown() {
    Rebuilt ship =
        new Ship()
            .engine(newOn(0), row -> row.with(MachineLayout.VALID_TO, Ship.day(600)))
            .engine(newOn(0), from(800))
            .counter(0, 0)
            .counter(600, 6_000)
            .counter(800, 8_000)
            .counter(2000, 20_000)
            .overhaul("O1", 700)
            .rebuilt();

    assertEquals(
        List.of(
            Optional.of(new Period(Ship.endOf(0), Ship.endOf(600))),
            Optional.of(new Period(Ship.endOf(800), Ship.endOf(2000)))),
        ship.checked().value().machines().stream().map(MachineHistory::observed).toList());
    assertEquals(
        List.of("6000 ...", "6000 ...", "6000 ...", "6000 ...", "? ...", "? ...", "? ...", "? ..."),
        ship.intervals(Subject.POSITION));
    assertEquals(List.of("overhaul-outside-hours O1"), ship.problems());
  }

  static LongStream drawings() {
    return LongStream.range(0, 200);
  }

  /** The day after one period ends the next begins, and both say the same of the machine. */
  @ParameterizedTest
  @MethodSource("drawings")
  void dividingAMachineIntoEqualPeriodsChangesNothing(long drawing) {
    List<SourcedRow> rows = RandomShip.drawn(drawing).rows();
    int day = new Random(drawing).nextInt(RandomShip.LAST_DAY);

    assertEquals(rebuilt(rows), rebuilt(divided(rows, day)));
  }

  @ParameterizedTest
  @MethodSource("drawings")
  void theOrderOfAMachinesRowsChangesNothing(long drawing) {
    Random random = new Random(drawing);
    List<SourcedRow> rows = new ArrayList<>(divided(RandomShip.drawn(drawing).rows(), 400));
    rows.addAll(new Ship().engine(model(RERATED), from(800)).rows());
    rows.addAll(new Ship().engine(model("QX-70"), from(1200), newOn(1200)).rows());
    List<Object> inOrder = rebuilt(rows);
    Collections.shuffle(rows, random);

    assertEquals(inOrder, rebuilt(rows));
  }

  /** An engine re-rated at random counts, over its models, what it counts as one machine. */
  @ParameterizedTest
  @MethodSource("drawings")
  void theModelsOfAReratedMachineShareOutWhatItCounts(long drawing) {
    List<SourcedRow> rows = new ArrayList<>(RandomShip.drawn(drawing).rows());
    rows.addAll(new Ship().engine(model(RERATED), from(new Random(drawing).nextInt(1500))).rows());
    MachineHistory engine = history(rows).value().machines().get(0);
    Period always = new Period(Ship.endOf(0), Ship.endOf(RandomShip.LAST_DAY));

    assertEquals(
        engine.exposureWithin(always).hours(),
        engine.byModel().stream()
            .map(stretch -> stretch.exposureWithin(always).hours())
            .reduce(RunningHours.ZERO, RunningHours::plus));
    assertEquals(
        engine.visits(),
        engine.byModel().stream().flatMap(stretch -> stretch.visits().stream()).toList());
    assertEquals(
        engine.lives().size(),
        engine.byModel().stream().mapToInt(stretch -> stretch.lives().size()).sum());
    assertEquals(
        engine.intervals().size(),
        engine.byModel().stream().mapToInt(stretch -> stretch.intervals().size()).sum());
  }

  private static List<SourcedRow> divided(List<SourcedRow> rows, int day) {
    List<SourcedRow> divided = new ArrayList<>();
    for (SourcedRow row : rows) {
      if (row.cells().kind() == RecordKind.MACHINES) {
        divided.add(changed(row, cells -> cells.with(MachineLayout.VALID_TO, Ship.day(day - 1))));
        divided.add(changed(row, from(day)));
      } else {
        divided.add(row);
      }
    }
    return divided;
  }

  private static SourcedRow changed(SourcedRow row, Ship.Fill fill) {
    Cells.Builder cells = row.cells().change();
    fill.in(cells);
    return new SourcedRow(cells.build(), row.origin());
  }

  private static Checked<VesselHistory, Problem> history(List<SourcedRow> rows) {
    return History.rebuild(
        CurrentRecords.of(Ship.VESSEL, rows.stream().map(row -> new ArrivedRow(1, row)).toList())
            .forHistory(),
        TestCatalogue.CATALOGUE,
        RunningHours.ofHours(24),
        Ship.endOf(RandomShip.LAST_DAY));
  }

  private static List<Object> rebuilt(List<SourcedRow> rows) {
    Checked<VesselHistory, Problem> history = history(rows);
    List<Object> rebuilt = new ArrayList<>(history.problems());
    for (MachineHistory machine : history.value().machines()) {
      rebuilt.add(machine.observed());
      rebuilt.addAll(machine.visits());
      rebuilt.addAll(machine.intervals());
      rebuilt.addAll(machine.lives());
      rebuilt.addAll(machine.positions());
    }
    return rebuilt;
  }

  private static Ship.Fill model(String model) {
    return row -> row.with(MachineLayout.MODEL, model);
  }

  private static Ship.Fill from(int day) {
    return row -> row.with(MachineLayout.VALID_FROM, Ship.day(day));
  }

  private static Ship.Fill newOn(int day) {
    return row -> row.with(MachineLayout.IN_SERVICE_ON, Ship.day(day));
  }

  private static void assertModel(
      String model, Period observed, long hours, String overhaul, MachineHistory machine) {
    assertEquals(model, machine.machine().model());
    assertEquals(Optional.of(observed), machine.observed());
    assertEquals(
        RunningHours.ofHours(hours),
        machine.exposureWithin(new Period(Ship.endOf(0), Ship.endOf(2000))).hours());
    assertEquals(
        List.of(overhaul),
        machine.visits().stream().map(visit -> visit.overhaul().id().overhaul()).toList());
  }

  private static List<Long> positionIntervals(MachineHistory machine) {
    return machine.intervals().stream()
        .filter(interval -> interval.component().equals(TestCatalogue.FUEL_INJECTOR))
        .filter(interval -> interval.subject() == Subject.POSITION)
        .map(interval -> interval.length().orElseThrow().tenths() / 10)
        .sorted()
        .toList();
  }

  private static List<String> models(Ship ship) {
    MachineEntry engine = ship.rebuilt().engine().machine();
    return Stream.concat(engine.formerly().stream(), Stream.of(engine))
        .map(MachineEntry::model)
        .toList();
  }

  private static Census.Count machineRows(Ship ship) {
    return CurrentRecords.of(
            Ship.VESSEL, ship.rows().stream().map(row -> new ArrivedRow(1, row)).toList())
        .census()
        .of(RecordKind.MACHINES);
  }
}
