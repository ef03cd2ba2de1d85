package leadline.history;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import leadline.fleet.Cells;
import leadline.fleet.MovementLayout;
import leadline.fleet.RecordKind;
import leadline.fleet.StockLayout;
import leadline.problem.Problem;
import org.junit.jupiter.api.Test;

/** Counts of nozzles against the movements between them, by hand. */
class StockQuestionsTest {

  private static Ship ship() {
    return Ship.tenHoursADay();
  }

  /** A ship that keeps a log of movements from the first day on. */
  private static Ship withLog() {
    return moved(ship(), "M0", "o-rings", 0, 1);
  }

  private static Ship counted(Ship ship, int day, long onHand) {
    return ship.add(
        Cells.of(RecordKind.STOCK)
            .with(StockLayout.VESSEL, Ship.VESSEL)
            .with(StockLayout.PART, "nozzle")
            .with(StockLayout.COUNTED_ON, Ship.day(day))
            .with(StockLayout.ON_HAND, onHand));
  }

  private static Ship moved(Ship ship, String name, int day, long quantity) {
    return moved(ship, name, "nozzle", day, quantity);
  }

  private static Ship moved(Ship ship, String name, String part, int day, long quantity) {
    return ship.add(
        Cells.of(RecordKind.MOVEMENTS)
            .with(MovementLayout.VESSEL, Ship.VESSEL)
            .with(MovementLayout.MOVEMENT, name)
            .with(MovementLayout.PART, part)
            .with(MovementLayout.MOVED_ON, Ship.day(day))
            .with(MovementLayout.QUANTITY, quantity));
  }

  /** 6 + 2 - 3 = 5. Day 300 of 2020 is 27 October, day 330 is 26 November. */
  private static Ship twoInAndThreeOut(long countedAfter) {
    Ship ship = counted(counted(withLog(), 300, 6), 330, countedAfter);
    return moved(moved(ship, "M1", 310, 2), "M2", 320, -3);
  }

  @Test
  void aCountThatTheMovementsLeadToIsNotAskedAbout() {
    assertAsked(twoInAndThreeOut(5));
  }

  @Test
  void aCountThatTheyDoNotLeadToIs() {
    Ship ship = twoInAndThreeOut(3);

    assertAsked(ship, "nozzle 2020-11-26");
    Problem asked = asked(ship, 1000).get(0);
    assertEquals("Is a movement of the nozzle missing, or a count wrong?", asked.question());
    assertEquals(
        "The count of the nozzle was 6 on 2020-10-27; from then to 2020-11-26 2 came in and 3 left,"
            + " so that it should be 5, and it was 3.",
        asked.evidence());
    assertEquals(4, asked.origins().size());
  }

  /** 5 - 2 = 3. */
  @Test
  void theMissingMovementClosesTheQuestion() {
    assertAsked(moved(twoInAndThreeOut(3), "M3", 325, -2));
  }

  @Test
  void movementsOfAnotherPartExplainNothing() {
    Ship ship = counted(counted(withLog(), 300, 6), 330, 5);
    assertAsked(moved(ship, "M1", "nrv-spring", 310, -1), "nozzle 2020-11-26");
    assertEquals(
        "The count of the nozzle was 6 on 2020-10-27; from then to 2020-11-26 no movement is on"
            + " record, so that it should be 6, and it was 5.",
        asked(ship, 1000).get(0).evidence());
  }

  @Test
  void aVesselThatKeepsNoLogOfMovementsIsNotAsked() {
    assertAsked(counted(counted(ship(), 300, 6), 330, 3));
  }

  /** The log begins on day 310: what was moved from day 300 to then nobody wrote down. */
  @Test
  void aCountBeforeTheLogIsNotCompared() {
    Ship ship = counted(counted(counted(ship(), 300, 6), 330, 3), 360, 2);
    assertAsked(moved(ship, "M1", "o-rings", 310, -1), "nozzle 2020-12-26");
  }

  /** One left on the day of the first count: 6 was counted before it or after, so 5 or 6. */
  @Test
  void aMovementOnTheDayOfACountMayHaveComeBeforeItOrAfter() {
    for (int day : new int[] {300, 330}) {
      for (long right : new long[] {5, 6}) {
        assertAsked(moved(counted(counted(withLog(), 300, 6), 330, right), "M1", day, -1));
      }
      Ship wrong = moved(counted(counted(withLog(), 300, 6), 330, 4), "M1", day, -1);
      assertAsked(wrong, "nozzle 2020-11-26");
      assertEquals(
          "The count of the nozzle was 6 on 2020-10-27; from then to 2020-11-26 0 came in and 1"
              + " left, so that it should be 5 to 6, and it was 4.",
          asked(wrong, 1000).get(0).evidence());
    }
  }

  /** 6, 3, 6 with nothing moved: either the middle one is wrong, or two movements are missing. */
  @Test
  void eachPairThatDisagreesIsAskedAbout() {
    Ship ship = counted(counted(counted(withLog(), 300, 6), 330, 3), 360, 6);
    assertAsked(ship, "nozzle 2020-11-26", "nozzle 2020-12-26");
  }

  @Test
  void aCountAfterTheEndIsNotComparedYet() {
    assertEquals(List.of(), asked(twoInAndThreeOut(3), 329));
    assertEquals(1, asked(twoInAndThreeOut(3), 330).size());
  }

  /**
   * 1,000 logs of up to 20 months, with a count a month and a movement on any day: whole, they are
   * asked nothing, whichever side of a count the movements of its day were on; with one count
   * spoiled by more than moved on the days of the counts, about that one and the next.
   */
  @Test
  void onlyASpoiledCountIsAskedAbout() {
    Random random = new Random(20_271);
    for (int drawing = 0; drawing < 1_000; drawing++) {
      int months = 2 + random.nextInt(19);
      int spoiled = random.nextInt(months);
      List<long[]> movements = new ArrayList<>();
      long[] counts = new long[months];
      long stock = 1_000;
      for (int day = 0; day <= 30 * (months - 1); day++) {
        long before = stock;
        if (random.nextInt(5) == 0) {
          long quantity = random.nextInt(-4, 5);
          movements.add(new long[] {day, quantity});
          stock += quantity;
        }
        if (day % 30 == 0) {
          counts[day / 30] = random.nextBoolean() ? before : stock;
        }
      }
      assertAsked(log(movements, counts));
      counts[spoiled] += 9;
      assertAsked(
          log(movements, counts),
          LongStream.of(spoiled, spoiled + 1L)
              .filter(month -> month > 0 && month < months)
              .mapToObj(month -> "nozzle " + Ship.day((int) (30 * month)))
              .toArray(String[]::new));
    }
  }

  private static Ship log(List<long[]> movements, long[] counts) {
    Ship ship = withLog();
    for (int month = 0; month < counts.length; month++) {
      counted(ship, 30 * month, counts[month]);
    }
    for (int i = 0; i < movements.size(); i++) {
      moved(ship, "N" + i, (int) movements.get(i)[0], movements.get(i)[1]);
    }
    return ship;
  }

  private static void assertAsked(Ship ship, String... records) {
    assertEquals(
        List.of(records), asked(ship, 1000).stream().map(asked -> asked.record()).toList());
  }

  private static List<Problem> asked(Ship ship, int cutOff) {
    return ShipQuestionsTest.asked(ship, cutOff, 2000).stream()
        .filter(asked -> asked.kind().equals("stock-does-not-add-up"))
        .toList();
  }
}
