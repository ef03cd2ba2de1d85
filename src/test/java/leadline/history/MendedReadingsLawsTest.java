package leadline.history;

import static leadline.history.Ship.endOf;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import leadline.fleet.MachineId;
import leadline.fleet.Reading;
import leadline.fleet.ReadingKind;
import leadline.origin.FileDigest;
import leadline.origin.Origin;
import leadline.problem.Checked;
import leadline.quantity.RunningHours;
import org.junit.jupiter.api.Test;

/** What holds of every log, however right or wrong it is. */
class MendedReadingsLawsTest {

  private static final int LOGS = 400;
  private static final List<Integer> DAYS_APART = List.of(1, 7, 30);
  private static final int DIGITS = 5;
  private static final Origin ORIGIN = new Origin("hours.csv", FileDigest.of(new byte[0]), 2);

  @Test
  void theOrderOfRowsChangesNothing() {
    for (int seed = 0; seed < LOGS; seed++) {
      Random random = new Random(seed);
      List<Reading> log = spoiled(log(random), random);
      Checked<HourSeries, ReadingProblem> before = build(log);
      Collections.shuffle(log, random);
      Checked<HourSeries, ReadingProblem> after = build(log);
      assertEquals(before.problems(), after.problems(), "seed " + seed);
      assertEquals(before.value().notes(), after.value().notes(), "seed " + seed);
    }
  }

  @Test
  void aCleanLogIsNeitherMendedNorQuestioned() {
    for (int seed = 0; seed < LOGS; seed++) {
      Checked<HourSeries, ReadingProblem> built = build(log(new Random(seed)));
      assertEquals(List.of(), built.problems(), "seed " + seed);
      assertTrue(
          built.value().notes().stream()
              .map(ReadingNote::rule)
              .allMatch(rule -> rule == HourRule.ROLL_OVER || rule == HourRule.REPLACED),
          "seed " + seed);
    }
  }

  @Test
  void hoursNeverFallAndLieWithinTheirBounds() {
    for (int seed = 0; seed < LOGS; seed++) {
      Random random = new Random(seed);
      HourSeries series = build(spoiled(log(random), random)).value();
      Instant end = series.span().orElseThrow().end();
      RunningHours last = RunningHours.ZERO;
      for (Instant at = series.span().orElseThrow().start();
          !at.isAfter(end);
          at = at.plusSeconds(47_000)) {
        HourSeries.Bounded hours = series.at(at).orElseThrow();
        assertTrue(!last.isAbove(hours.hours()), "seed " + seed);
        assertTrue(!hours.lower().isAbove(hours.hours()), "seed " + seed);
        assertTrue(!hours.hours().isAbove(hours.upper()), "seed " + seed);
        last = hours.hours();
      }
    }
  }

  /**
   * A counter that is read as it is taken off, and rolls over where its digits are full; or totals,
   * of which no two in a row are alike by chance.
   */
  private static List<Reading> log(Random random) {
    int apart = DAYS_APART.get(random.nextInt(3));
    boolean ofTotals = apart == 30 && random.nextBoolean();
    long full = 10 * Math.round(Math.pow(10, DIGITS));
    long figure = random.nextInt((int) full);
    int changed = 10 + random.nextInt(40);
    double share = random.nextDouble();
    long last = 0;
    List<Reading> log = new ArrayList<>();
    log.add(reading(ReadingKind.COUNTER, 0, figure));
    for (int i = 1; i < 60; i++) {
      long run = Math.round(240 * apart * Math.min(1, share + random.nextDouble() / 2));
      run -= run == last && run > 0 ? 1 : 0;
      last = run;
      figure = (figure + run) % full;
      log.add(
          ofTotals
              ? reading(ReadingKind.TOTAL, i * apart, run)
              : reading(ReadingKind.COUNTER, i * apart, figure));
      if (i == changed && !ofTotals) {
        figure = random.nextInt(1000);
        log.add(reading(ReadingKind.REPLACED, i * apart, figure));
      }
    }
    return log;
  }

  /** One figure in ten is another. */
  private static List<Reading> spoiled(List<Reading> log, Random random) {
    List<Reading> spoiled = new ArrayList<>();
    for (Reading reading : log) {
      spoiled.add(
          random.nextInt(10) > 0
              ? reading
              : new Reading(
                  reading.machine(),
                  reading.at(),
                  RunningHours.ofTenths(random.nextInt(1_000_000)),
                  reading.kind(),
                  ORIGIN));
    }
    return spoiled;
  }

  private static Reading reading(ReadingKind kind, int day, long tenths) {
    return new Reading(
        new MachineId(Ship.VESSEL, Ship.ENGINE),
        endOf(day),
        RunningHours.ofTenths(tenths),
        kind,
        ORIGIN);
  }

  private static Checked<HourSeries, ReadingProblem> build(List<Reading> log) {
    return HourSeriesBuilder.build(log, Optional.of(DIGITS));
  }
}
