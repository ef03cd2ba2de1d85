package leadline.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.LongStream;
import leadline.fleet.MachineEntry;
import leadline.fleet.Overhaul;
import leadline.quantity.RunningHours;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold of the items of any ship, over ships drawn at random. */
class ItemLawsTest {

  private static final int CUT_OFF = 1400;
  private static final RunningHours TOLERANCE = RunningHours.ofHours(24);

  static LongStream drawings() {
    return LongStream.range(0, 60);
  }

  @ParameterizedTest
  @MethodSource("drawings")
  void theStintsAtAPositionDoNotRunLongerThanTheMachine(long drawing) {
    VesselRecords records = RandomShip.drawn(drawing).records();
    MachineEntry engine = records.machines().get(0);
    MachineLog machine =
        MachineLog.of(
            engine,
            HourSeriesBuilder.build(records.readings(), engine.counterDigits()).value(),
            Ship.endOf(CUT_OFF));
    if (machine.observed().isEmpty()) {
      return;
    }
    List<Overhaul> overhauls =
        records.overhauls().stream()
            .filter(overhaul -> !overhaul.removedAt().isAfter(Ship.endOf(CUT_OFF)))
            .toList();
    PlacedVisits visits =
        VisitPlacer.place(overhauls, machine, TestCatalogue.CATALOGUE, TOLERANCE).value();
    Workbook workbook = new Workbook(new FindingsByOverhaul(records.findings()), TOLERANCE);
    // An overhaul's own figure may lie beyond the series by the tolerance.
    RunningHours ran =
        machine.hoursAt(machine.end()).minus(machine.hoursAt(machine.start())).plus(TOLERANCE);
    for (FollowedPosition position :
        MachinePositions.follow(Ship.VESSEL, machine, visits, TestCatalogue.CATALOGUE, workbook)) {
      RunningHours fitted =
          position.stints().stream()
              .map(Stint::run)
              .flatMap(Optional::stream)
              .reduce(RunningHours.ZERO, RunningHours::plus);
      assertFalse(fitted.isAbove(ran), () -> position.position().toString());
    }
  }

  @ParameterizedTest
  @MethodSource("drawings")
  void aMistypedSerialChangesNothingOfOtherItems(long drawing) {
    Random random = new Random(drawing);
    VesselRecords right = rotation(random).records();
    int at = random.nextInt(right.overhauls().size());
    Overhaul overhaul = right.overhauls().get(at);
    String written =
        random.nextBoolean()
            ? overhaul.removedSerial().orElseThrow()
            : overhaul.fittedSerial().orElseThrow();
    String mistyped = "LB10" + random.nextInt(10);
    List<Overhaul> overhauls = new ArrayList<>(right.overhauls());
    overhauls.set(
        at,
        overhaul.removedSerial().orElseThrow().equals(written)
            ? overhaul.withRemovedSerial(mistyped)
            : overhaul.withFittedSerial(mistyped));
    Rebuilt before = rebuilt(right);
    Rebuilt after =
        rebuilt(
            new VesselRecords(
                right.vessel(), right.machines(), right.readings(), overhauls, right.findings()));
    assertEquals(List.of(), before.problems());
    before.items().stream()
        .filter(item -> !item.equals(written) && !item.equals(mistyped))
        .forEach(
            item ->
                assertEquals(
                    before.lives(item, "spindle-guide"), after.lives(item, "spindle-guide"), item));
  }

  /** Four injectors and three spares that rotate without an error, every serial written. */
  private static Ship rotation(Random random) {
    Ship ship = Ship.newOnDayZero();
    String[] fitted = {"LB101", "LB102", "LB103", "LB104"};
    Deque<String> shelf = new ArrayDeque<>(List.of("LB105", "LB106", "LB107"));
    int day = 0;
    for (int number = 10; number < 40; number++) {
      day += 1 + random.nextInt(40);
      int place = random.nextInt(4);
      String removed = fitted[place];
      shelf.addLast(removed);
      fitted[place] = shelf.removeFirst();
      ship.overhaul(
          "O" + number,
          day,
          Ship.at(1 + place / 2, 1 + place % 2),
          Ship.removed(removed),
          Ship.fitted(fitted[place]));
    }
    return ship;
  }

  private static Rebuilt rebuilt(VesselRecords records) {
    return new Rebuilt(
        History.rebuild(records, TestCatalogue.CATALOGUE, TOLERANCE, Ship.endOf(CUT_OFF)));
  }
}
