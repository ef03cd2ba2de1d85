package leadline.history;

import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Random;
import leadline.fleet.Action;
import leadline.fleet.FoundWord;
import leadline.fleet.MachineLayout;
import leadline.fleet.OverhaulLayout;
import leadline.fleet.ReadingKind;
import leadline.fleet.Reason;
import leadline.fleet.Statement;
import leadline.fleet.TestResult;

/**
 * A small ship drawn at random, with the errors that logs have: falling and missing readings,
 * changed counters, rotated spares, serials left out or wrong, silent and contradictory findings.
 */
final class RandomShip {

  static final int LAST_DAY = 1500;

  private final Random random;
  private final Ship ship;
  private final String[] fitted = {"S1", "S2", "S3", "S4"};
  private final Deque<String> shelf = new ArrayDeque<>(List.of("S5", "S6"));

  private RandomShip(long drawing, Ship blank) {
    this.ship = blank;
    this.random = new Random(drawing);
  }

  /** The drawing of that number; the same every time. */
  static Ship drawn(long drawing) {
    return drawn(drawing, new Ship());
  }

  /** The drawing of that number, of a ship without records. */
  static Ship drawn(long drawing, Ship blank) {
    RandomShip drawn = new RandomShip(drawing, blank);
    drawn.addEngine();
    drawn.addReadings();
    int day = 0;
    for (int number = 10; number < 40; number++) {
      day += drawn.random.nextInt(2 * LAST_DAY / 30);
      drawn.addOverhaul("O" + number, day);
    }
    return drawn.ship;
  }

  private void addEngine() {
    boolean isNew = random.nextBoolean();
    boolean hasLateRecords = random.nextInt(4) == 0;
    LocalDate late = Ship.day(random.nextInt(600));
    ship.engine(
        row -> row.with(MachineLayout.COUNTER_DIGITS, 5L),
        row -> {
          if (isNew) {
            row.with(MachineLayout.IN_SERVICE_ON, Ship.day(0));
          }
          if (hasLateRecords) {
            row.with(MachineLayout.RECORDS_FROM, late);
          }
        });
  }

  private void addReadings() {
    double counter = random.nextBoolean() ? 95_000 : 3_000;
    int day = 0;
    while (day < LAST_DAY) {
      ship.counter(day, tenths(random.nextInt(15) == 0 ? random.nextInt(99_999) : counter));
      int days = 1 + random.nextInt(60);
      counter = (counter + days * random.nextDouble() * 20) % 100_000;
      day += days;
      if (random.nextInt(25) == 0) {
        counter = random.nextInt(20);
        ship.reading(ReadingKind.REPLACED, day, tenths(counter));
        day++;
      }
    }
  }

  private void addOverhaul(String overhaul, int day) {
    int place = random.nextInt(4);
    String removed = fitted[place];
    boolean isTest = random.nextInt(8) == 0;
    if (!isTest && random.nextInt(3) > 0) {
      shelf.addLast(removed);
      fitted[place] = shelf.removeFirst();
    }
    String now = random.nextInt(30) == 0 ? "S" + (1 + random.nextInt(6)) : fitted[place];
    int fittedOn = day + (random.nextInt(6) == 0 ? random.nextInt(40) : 0);
    ship.overhaul(
        overhaul,
        day,
        Ship.at(1 + place / 2, random.nextInt(40) == 0 ? 9 : 1 + place % 2),
        Ship.fittedOn(fittedOn),
        row -> {
          if (random.nextInt(4) > 0) {
            row.with(OverhaulLayout.REMOVED_SERIAL, removed);
          }
          if (random.nextInt(4) > 0) {
            row.with(OverhaulLayout.FITTED_SERIAL, now);
          }
          if (isTest) {
            row.with(OverhaulLayout.TEST_RESULT, any(TestResult.values()));
          }
        },
        Ship.because(isTest ? Reason.TEST_ONLY : any(Reason.values())));
    TestCatalogue.FUEL_INJECTOR.parts().forEach(part -> addFinding(overhaul, part.name()));
  }

  private void addFinding(String overhaul, String part) {
    if (random.nextInt(3) == 0) {
      return;
    }
    ship.finding(
        overhaul,
        part,
        row -> {
          if (random.nextInt(4) > 0) {
            Ship.opened(random.nextInt(5) > 0 ? Statement.YES : Statement.NO).in(row);
          }
          if (random.nextInt(5) > 0) {
            Ship.found(random.nextBoolean() ? FoundWord.SOUND : any(FoundWord.values())).in(row);
          }
          if (random.nextInt(4) > 0) {
            Ship.action(any(Action.values())).in(row);
          }
          if (random.nextInt(20) == 0) {
            Ship.inService().in(row);
          }
          if (random.nextInt(20) == 0) {
            Ship.hoursSinceNew(random.nextInt(20_000)).in(row);
          }
        });
  }

  private <T> T any(T[] values) {
    return values[random.nextInt(values.length)];
  }

  private static double tenths(double hours) {
    return Math.floor(hours * 10) / 10;
  }
}
