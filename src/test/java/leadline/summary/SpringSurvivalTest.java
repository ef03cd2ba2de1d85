package leadline.summary;

import static leadline.summary.SpringSurvival.AGE;
import static leadline.summary.SpringSurvival.BROKEN_BY;
import static leadline.summary.SpringSurvival.BROKEN_BY_LEAST;
import static leadline.summary.SpringSurvival.BROKEN_BY_MOST;
import static leadline.summary.SpringSurvival.EXTRAPOLATED;
import static leadline.summary.SpringSurvival.LIMITS_BY;
import static leadline.summary.SpringSurvival.METHOD;
import static leadline.summary.TestCatalogue.INJECTOR;
import static leadline.summary.TestCatalogue.NRV_SPRING;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import leadline.fleet.Reason;
import leadline.history.Condition;
import leadline.history.Observation;
import leadline.history.VesselHistory;
import leadline.quantity.RunningHours;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SpringSurvivalTest {

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

  private static void lives(TestMachine machine, Observation seen, int times) {
    for (int time = 0; time < times; time++) {
      machine.life(INJECTOR, NRV_SPRING, seen);
    }
  }

  private static Observation broken(long lower, long upper) {
    return new Observation.Within(RunningHours.ofHours(lower), RunningHours.ofHours(upper));
  }

  private static Observation working(long age) {
    return new Observation.WorkingAt(RunningHours.ofHours(age));
  }

  private static Rows fleet(VesselHistory... vessels) {
    return Rows.of(SpringSurvival.SPEC, vessels)
        .where(SharedColumns.PART, NRV_SPRING.name())
        .fleet();
  }

  private static TableRow at(Rows rows, String method, double age) {
    return rows.where(METHOD, method).where(AGE, age).only();
  }

  /** Current status by hand: 2 of 10 broken at 4,000 h, 6 of 10 at 8,000 h. */
  @Test
  void theCurveRisesBetweenTheOpeningsAndItsEdgesSayWhere() {
    TestMachine machine = opening("one");
    lives(machine, broken(0, 4_000), 2);
    lives(machine, working(4_000), 8);
    lives(machine, broken(0, 8_000), 6);
    lives(machine, working(8_000), 4);
    Rows rows = fleet(machine.alone());

    TableRow first = at(rows, "npmle", 4_000);
    assertEquals(0.2, first.find(BROKEN_BY.estimate()).orElseThrow(), 1e-12);
    assertEquals(0.2, first.find(BROKEN_BY_LEAST).orElseThrow(), 1e-12);
    assertEquals(0.2, first.find(BROKEN_BY_MOST).orElseThrow(), 1e-12);
    TableRow between = at(rows, "npmle", 6_000);
    assertEquals(0.2, between.find(BROKEN_BY_LEAST).orElseThrow(), 1e-12);
    assertEquals(0.6, between.find(BROKEN_BY_MOST).orElseThrow(), 1e-12);
    assertEquals(0.4, between.find(BROKEN_BY.estimate()).orElseThrow(), 1e-12);
    assertEquals("bootstrap-of-lives", between.need(LIMITS_BY));
    assertEquals(8, rows.where(METHOD, "npmle").rows().size());
  }

  /** At no failure the binomial limit: 20 working give 1 - 0.025^(1/20). */
  @Test
  void whereNothingVariesTheBinomialLimitStands() {
    TestMachine machine = opening("one");
    lives(machine, working(8_000), 20);
    TableRow row = at(fleet(machine.alone()), "npmle", 8_000);
    assertEquals(0.0, row.find(BROKEN_BY.estimate()).orElseThrow());
    assertEquals(1 - Math.pow(0.025, 1 / 20.0), row.find(BROKEN_BY.upper()).orElseThrow(), 1e-12);
    assertEquals("binomial", row.need(LIMITS_BY));
    assertEquals("too-few", row.need(EvidenceColumns.VERDICT));
  }

  @Test
  void aFittedCurveGoesOnBeyondTheOldestSpringAndSaysSo() {
    TestMachine machine = opening("one");
    for (long age = 3_000; age <= 12_000; age += 3_000) {
      lives(machine, broken(0, age), (int) (age / 1_000));
      lives(machine, working(age), 15 - (int) (age / 1_000));
    }
    Rows rows = fleet(machine.alone());
    assertEquals("no", at(rows, "weibull", 12_000).need(EXTRAPOLATED));
    assertEquals("yes", at(rows, "weibull", 13_000).need(EXTRAPOLATED));
    assertEquals("yes", at(rows, "weibull", 16_000).need(EXTRAPOLATED));
    assertEquals("profile-likelihood", at(rows, "weibull", 12_000).need(LIMITS_BY));
    assertEquals(12, rows.where(METHOD, "npmle").rows().size());
    TableRow row = at(rows, "weibull", 12_000);
    TableRow life =
        Rows.of(PartLifetimes.SPEC, machine.alone())
            .where(SharedColumns.PART, NRV_SPRING.name())
            .fleet()
            .where(PartLifetimes.DISTRIBUTION, "weibull")
            .only();
    assertEquals(
        life.find(LifeFigure.failedBy(RunningHours.ofHours(12_000)).lower()),
        row.find(BROKEN_BY.lower()));
    assertEquals(life.find(LifeFigure.SHAPE.upper()), row.find(LifeFigure.SHAPE.upper()));
  }

  @Test
  void withoutRoutineOpeningsThereIsNoCurve() {
    TestMachine machine =
        TestMachine.engine("one", "TWS-A", 6)
            .observed("2020-01-01", "2024-12-31")
            .running(16)
            .visits(4, INJECTOR, "2022-05-01", Reason.PLANNED, TestMachine.notOpened(NRV_SPRING));
    lives(machine, broken(0, 4_000), 9);
    TableRow row = fleet(machine.alone()).only();
    assertEquals("selective-opening", row.need(EvidenceColumns.VERDICT));
    assertEquals(Optional.empty(), row.find(BROKEN_BY.estimate()));
    assertEquals("none", row.need(LIMITS_BY));
  }

  @Test
  void springsAllKnownFromALaterAgeOnHaveARowWithoutACurve() {
    TestMachine machine = opening("one");
    machine.lifeFrom(3_000, INJECTOR, NRV_SPRING, working(9_000));
    TableRow row = fleet(machine.alone()).only();
    assertEquals("too-few", row.need(EvidenceColumns.VERDICT));
    assertEquals(Optional.empty(), row.find(BROKEN_BY.estimate()));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void curvesRiseAndLieWithinTheirEdgesAndLimits(long seed) {
    VesselHistory[] vessels = new RandomFleet(seed).vessels(12).toArray(VesselHistory[]::new);
    for (String method : new String[] {"npmle", "weibull"}) {
      double last = 0;
      for (TableRow row : fleet(vessels).where(METHOD, method).rows()) {
        double broken = row.find(BROKEN_BY.estimate()).orElseThrow();
        assertTrue(broken >= last, row::toString);
        last = broken;
        assertTrue(row.find(BROKEN_BY_LEAST).orElse(0.0) <= broken + 1e-12, row::toString);
        assertTrue(row.find(BROKEN_BY_MOST).orElse(1.0) >= broken - 1e-12, row::toString);
        assertTrue(row.find(BROKEN_BY.lower()).orElse(0.0) <= broken + 1e-12, row::toString);
        assertTrue(row.find(BROKEN_BY.upper()).orElse(1.0) >= broken - 1e-12, row::toString);
      }
    }
  }
}
