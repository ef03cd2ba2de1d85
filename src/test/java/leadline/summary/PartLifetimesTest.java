package leadline.summary;

import static leadline.summary.PartLifetimes.AIC_ABOVE_BEST;
import static leadline.summary.PartLifetimes.DISTRIBUTION;
import static leadline.summary.PartLifetimes.EXTRAPOLATED;
import static leadline.summary.PartLifetimes.LIMITS_BY_VESSELS;
import static leadline.summary.TestCatalogue.INJECTOR;
import static leadline.summary.TestCatalogue.NRV_SPRING;
import static leadline.summary.TestCatalogue.STARTING_SPRING;
import static leadline.summary.TestCatalogue.STARTING_VALVE;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import leadline.fleet.Reason;
import leadline.history.Condition;
import leadline.history.Observation;
import leadline.history.VesselHistory;
import leadline.quantity.RunningHours;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PartLifetimesTest {

  private static Rows springs(VesselHistory... vessels) {
    return Rows.of(PartLifetimes.SPEC, vessels).where(SharedColumns.PART, "nrv-spring");
  }

  private static TestMachine opening(String vessel) {
    return TestMachine.engine(vessel, "TWS-A", 6)
        .observed("2020-01-01", "2024-12-31")
        .running(16)
        .visits(
            4,
            INJECTOR,
            "2022-05-01",
            Reason.PLANNED,
            TestMachine.opened(NRV_SPRING, Condition.WORKING));
  }

  private static TestMachine neverOpening(String vessel) {
    return TestMachine.engine(vessel, "TWS-A", 6)
        .observed("2020-01-01", "2024-12-31")
        .running(16)
        .visits(4, INJECTOR, "2022-05-01", Reason.PLANNED, TestMachine.notOpened(NRV_SPRING));
  }

  private static TestMachine broken(TestMachine machine, long lower, long upper, int times) {
    for (int time = 0; time < times; time++) {
      machine.life(INJECTOR, NRV_SPRING, new Observation.Within(hours(lower), hours(upper)));
    }
    return machine;
  }

  private static TestMachine working(TestMachine machine, long age, int times) {
    for (int time = 0; time < times; time++) {
      machine.life(INJECTOR, NRV_SPRING, new Observation.WorkingAt(hours(age)));
    }
    return machine;
  }

  private static RunningHours hours(long hours) {
    return RunningHours.ofHours(hours);
  }

  /** Three ages, two of them a shape's: 6 of 40, 8 of 20 as worked by hand, and 5 between. */
  private static TestMachine enough(TestMachine machine) {
    broken(machine, 0, 8_000, 6);
    broken(machine, 0, 12_000, 5);
    broken(machine, 0, 16_000, 8);
    working(machine, 8_000, 34);
    working(machine, 12_000, 10);
    return working(machine, 16_000, 12);
  }

  @Test
  void fiveFailuresAtThreeAgesGiveAFreeShape() {
    Rows rows = springs(enough(opening("one")).alone()).fleet();
    assertEquals(5, rows.rows().size());
    assertEquals(0.0, rows.rows().get(0).need(AIC_ABOVE_BEST));
    double last = 0;
    for (TableRow row : rows.rows()) {
      assertEquals("ok", row.need(EvidenceColumns.VERDICT));
      assertTrue(row.need(AIC_ABOVE_BEST) >= last, row::toString);
      last = row.need(AIC_ABOVE_BEST);
    }
    TableRow weibull = rows.where(DISTRIBUTION, "weibull").only();
    assertEquals("none", weibull.need(LIMITS_BY_VESSELS));
    assertEquals("scale_h", weibull.need(EXTRAPOLATED));
    assertEquals(
        weibull.find(LifeFigure.failedBy(RunningHours.ofHours(8_000)).estimate()),
        weibull.find(LifeFigure.FAILED_BY_INTERVAL.estimate()));
  }

  @Test
  void twoAgesAreTooFewForAShapeHoweverManyFailed() {
    TestMachine machine = broken(opening("one"), 0, 8_000, 6);
    broken(machine, 0, 8_500, 8);
    working(machine, 16_000, 12);
    Rows rows = springs(machine.alone()).fleet();
    assertEquals(
        List.of("weibull-shape-1", "weibull-shape-1.5", "weibull-shape-2", "weibull-shape-3"),
        rows.each(DISTRIBUTION));
    rows.rows().forEach(row -> assertEquals("too-few", row.need(EvidenceColumns.VERDICT)));
    rows.rows().forEach(row -> assertEquals(Optional.empty(), row.find(LifeFigure.SHAPE.lower())));
  }

  @Test
  void livesOfAVesselThatChoosesItsOpeningsAreCountedAndLeftOut() {
    TestMachine chooses = broken(neverOpening("two"), 0, 4_000, 30);
    Rows rows = springs(enough(opening("one")).alone(), chooses.alone());
    Rows alone = springs(enough(opening("one")).alone());
    TableRow fleet = rows.fleet().where(DISTRIBUTION, "weibull").only();
    assertEquals(30, fleet.need(PartLifetimes.SELECTIVE));
    assertEquals(
        alone.fleet().where(DISTRIBUTION, "weibull").only().find(LifeFigure.SCALE.estimate()),
        fleet.find(LifeFigure.SCALE.estimate()));
    TableRow vessel = rows.stratum("vessel", "two").only();
    assertEquals("none", vessel.need(DISTRIBUTION));
    assertEquals("selective-opening", vessel.need(EvidenceColumns.VERDICT));
  }

  @Test
  void aPartThatAgesByStartsHasNoLifeInHours() {
    TestMachine machine =
        TestMachine.engine("one", "TWS-A", 6).observed("2020-01-01", "2024-12-31").running(16);
    machine.life(STARTING_VALVE, STARTING_SPRING, new Observation.Exact(hours(3_000)));
    TableRow row =
        Rows.of(PartLifetimes.SPEC, machine.alone())
            .where(SharedColumns.PART, STARTING_SPRING.name())
            .fleet()
            .only();
    assertEquals("wrong-clock", row.need(EvidenceColumns.VERDICT));
    assertEquals(Optional.empty(), row.find(LifeFigure.SCALE.estimate()));
  }

  /** exp(-10 (8,000 / scale)^2) = 0.025 at the least scale. */
  @Test
  void withoutAFailureTheLivesSetALimitOnOneSide() {
    TableRow row =
        springs(working(opening("one"), 8_000, 10).alone())
            .fleet()
            .where(DISTRIBUTION, "weibull-shape-2")
            .only();
    double least = 8_000 * Math.sqrt(10 / -Math.log(0.025));
    assertEquals(least, row.find(LifeFigure.SCALE.lower()).orElseThrow(), 1e-6);
    assertEquals(Optional.empty(), row.find(LifeFigure.SCALE.estimate()));
    assertEquals(Optional.empty(), row.find(LifeFigure.SCALE.upper()));
    assertEquals(0.0, row.find(LifeFigure.FAILED_BY_INTERVAL.estimate()).orElseThrow());
    assertEquals(
        1 - Math.pow(0.025, 0.1),
        row.find(LifeFigure.FAILED_BY_INTERVAL.upper()).orElseThrow(),
        1e-12);
  }

  @Test
  void whereNothingIsKnownToHaveLastedTheRowHasCountsOnly() {
    TableRow row = springs(broken(opening("one"), 0, 8_000, 3).alone()).fleet().only();
    assertEquals("none", row.need(DISTRIBUTION));
    assertEquals("too-few", row.need(EvidenceColumns.VERDICT));
    assertEquals(3, row.need(PartLifetimes.INTERVAL));
  }

  @Test
  void aPartNeverSeenHasNothingToTell() {
    TestMachine machine = working(opening("one"), 0, 7);
    machine.life(INJECTOR, NRV_SPRING, new Observation.NoAge());
    TableRow row = springs(machine.alone()).fleet().only();
    assertEquals("insufficient", row.need(EvidenceColumns.VERDICT));
    assertEquals(7, row.need(PartLifetimes.UNVERIFIED));
    assertEquals(1, row.need(PartLifetimes.WITHOUT_AGE));
    assertEquals(8, row.need(PartLifetimes.LIVES));
  }

  /**
   * Half of the vessels break springs early, the others late: what is alike on board counts once.
   */
  @Test
  void tenVesselsUnlikeEachOtherWidenTheLimits() {
    VesselHistory[] unlike = new VesselHistory[12];
    VesselHistory[] eleven = new VesselHistory[9];
    for (int number = 0; number < 12; number++) {
      TestMachine machine = opening("vessel-" + number);
      int more = number % 2 == 0 ? 5 : 0;
      for (int opening = 2; opening <= 4; opening++) {
        broken(machine, 0, 4_000L * opening, opening - 1 + more);
        working(machine, 4_000L * opening, 11 - opening - more);
      }
      unlike[number] = machine.alone();
      if (number < 9) {
        eleven[number] = machine.alone();
      }
    }
    TableRow weibull = springs(unlike).fleet().where(DISTRIBUTION, "weibull").only();
    assertTrue(
        weibull.need(LIMITS_BY_VESSELS).contains("failed_by_8000_h_share"), weibull::toString);
    assertEquals(
        "none",
        springs(eleven).fleet().where(DISTRIBUTION, "weibull").only().need(LIMITS_BY_VESSELS));
  }

  /** The kinds of life partition the lives, in every row; and the strata partition the fleet. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void everyLifeIsCountedOnce(long seed) {
    VesselHistory[] fleet = new RandomFleet(seed).vessels(12).toArray(VesselHistory[]::new);
    Map<String, Map<String, Long>> lives = new HashMap<>();
    for (TableRow row : Rows.of(PartLifetimes.SPEC, fleet).rows()) {
      assertEquals(
          row.need(PartLifetimes.LIVES),
          row.need(PartLifetimes.EXACT)
              + row.need(PartLifetimes.INTERVAL)
              + row.need(PartLifetimes.RIGHT_CENSORED)
              + row.need(PartLifetimes.REJECTED)
              + row.need(PartLifetimes.UNVERIFIED)
              + row.need(PartLifetimes.WITHOUT_AGE)
              + row.need(PartLifetimes.SELECTIVE),
          row::toString);
      String stratum = row.need(SharedColumns.STRATUM);
      lives
          .computeIfAbsent(
              row.need(SharedColumns.LEVEL)
                  + row.need(SharedColumns.COMPONENT)
                  + row.need(SharedColumns.PART),
              none -> new HashMap<>())
          .put(stratum, row.need(PartLifetimes.LIVES));
    }
    lives.replaceAll(
        (key, byStratum) ->
            Map.of("all", byStratum.values().stream().mapToLong(Long::longValue).sum()));
    lives.forEach(
        (key, count) -> {
          if (key.startsWith("fleet")) {
            assertEquals(count, lives.get(key.replaceFirst("fleet", "model")));
            assertEquals(count, lives.get(key.replaceFirst("fleet", "vessel")));
          }
        });
  }

  /** Censoring never raises a rate: a failure taken for a life that went on longer lowers it. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void censoringNeverRaisesTheChance(long seed) {
    Random random = new Random(seed);
    TestMachine all = opening("one");
    TestMachine censored = opening("one");
    for (int life = 0; life < 40; life++) {
      long upper = 2_000L + random.nextInt(16_000);
      broken(all, 0, upper, 1);
      if (life % 4 == 0) {
        working(censored, upper, 1);
      } else {
        broken(censored, 0, upper, 1);
      }
      working(all, 9_000, 1);
      working(censored, 9_000, 1);
    }
    assertTrue(failedByInterval(censored) <= failedByInterval(all));
  }

  private static double failedByInterval(TestMachine machine) {
    return springs(machine.alone()).fleet().rows().stream()
        .filter(row -> Set.of("exponential", "weibull-shape-1").contains(row.need(DISTRIBUTION)))
        .findFirst()
        .flatMap(row -> row.find(LifeFigure.FAILED_BY_INTERVAL.estimate()))
        .orElseThrow();
  }
}
