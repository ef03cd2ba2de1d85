package leadline.summary;

import static leadline.summary.EvidenceColumns.ELIGIBLE;
import static leadline.summary.EvidenceColumns.EVENTS;
import static leadline.summary.EvidenceColumns.EXPOSURE;
import static leadline.summary.EvidenceColumns.INSPECTED;
import static leadline.summary.EvidenceColumns.VERDICT;
import static leadline.summary.OverhaulIntervals.BEYOND_INTERVAL_SHARE;
import static leadline.summary.OverhaulIntervals.BREAKDOWN_SHARE;
import static leadline.summary.OverhaulIntervals.CLOCK;
import static leadline.summary.OverhaulIntervals.COMPLETED;
import static leadline.summary.OverhaulIntervals.CONDITION_SHARE;
import static leadline.summary.OverhaulIntervals.KM_MEDIAN;
import static leadline.summary.OverhaulIntervals.NAIVE_MEAN;
import static leadline.summary.OverhaulIntervals.PLANNED_SHARE;
import static leadline.summary.OverhaulIntervals.POLICY_INTERVAL;
import static leadline.summary.OverhaulIntervals.RESTRICTED_MEAN;
import static leadline.summary.OverhaulIntervals.RESTRICTED_TO;
import static leadline.summary.OverhaulIntervals.RUNNING;
import static leadline.summary.OverhaulIntervals.SPEC;
import static leadline.summary.OverhaulIntervals.START_UNKNOWN;
import static leadline.summary.TestCatalogue.INJECTOR;
import static leadline.summary.TestCatalogue.NOZZLE;
import static leadline.summary.TestMachine.opened;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import leadline.fleet.Catalogue;
import leadline.fleet.Reason;
import leadline.history.Condition;
import leadline.history.VesselHistory;
import leadline.quantity.RunningHours;
import org.junit.jupiter.api.Test;

class OverhaulIntervalsTest {

  private static TestMachine engine(String vessel) {
    return TestMachine.engine(vessel, "TWS-A", 5);
  }

  private static Rows positions(Catalogue catalogue, TestMachine... machines) {
    return Rows.of(
            SPEC,
            catalogue,
            List.of(machines).stream().map(TestMachine::alone).toArray(VesselHistory[]::new))
        .where(SharedColumns.COMPONENT, INJECTOR.name())
        .where(CLOCK, "position");
  }

  private static TableRow fleet(TestMachine... machines) {
    return positions(TestCatalogue.CATALOGUE, machines).fleet().only();
  }

  /** A policy of 8,200 h cuts the mean off at 12,300 h. */
  private static final Catalogue EVERY_8200_H =
      new Catalogue(List.of(TestCatalogue.withInterval(INJECTOR, 8_200)));

  /**
   * Closed 7,600 8,200 9,100 10,400, running 12,300 9,800 6,000 2,500, spread over two vessels:
   * computed by hand from the definitions of Kaplan and Meier 1958 and of Klein and Moeschberger
   * 2003, section 4.5.
   */
  private static Rows runningIntervals() {
    return positions(
        EVERY_8200_H,
        engine("auklet")
            .completed(INJECTOR, Reason.PLANNED, 7_600, 10_400)
            .stillRunning(INJECTOR, 12_300, 2_500)
            .startUnseen(INJECTOR, Optional.of(Reason.PLANNED)),
        engine("bunting")
            .completed(INJECTOR, Reason.BREAKDOWN, 8_200)
            .completed(INJECTOR, Reason.CONDITION, 9_100)
            .stillRunning(INJECTOR, 9_800, 6_000)
            .startUnseen(INJECTOR, Optional.empty()));
  }

  @Test
  void runningIntervalsLengthenTheNaiveMean() {
    TableRow row = runningIntervals().fleet().only();
    assertEquals(4L, row.need(COMPLETED));
    assertEquals(4L, row.need(RUNNING));
    assertEquals(2L, row.need(START_UNKNOWN));
    // (7,600 + 8,200 + 9,100 + 10,400) / 4
    assertEquals(8_825.0, row.need(NAIVE_MEAN));
    // At risk 6, 5, 4 and then 2: S = 5/6, 4/6, 3/6, 1/4.
    assertEquals(9_100.0, row.need(KM_MEDIAN.estimate()));
    assertEquals(12_300.0, row.need(RESTRICTED_TO));
    assertEquals(8_200.0, row.need(POLICY_INTERVAL));
    // 7,600 + 600 x 5/6 + 900 x 4/6 + 1,300 x 3/6 + 1,900 x 1/4
    assertEquals(9_825.0, row.need(RESTRICTED_MEAN.estimate()), 1e-9);
    // Greenwood: 2,225^2/30 + 1,725^2/20 + 1,125^2/12 + 475^2/2 = 532,083.3; 1.959964 x its root.
    // On the scale of log(9,825 / 2,475) its standard error is 12,300 / (9,825 x 2,475) of that.
    double margin = 1.959964 * Math.sqrt(532_083 + 1 / 3.0) * 12_300 / (9_825.0 * 2_475);
    assertEquals(
        12_300 / (1 + 2_475 / 9_825.0 * Math.exp(margin)), row.need(RESTRICTED_MEAN.lower()), 0.01);
    assertEquals(
        12_300 / (1 + 2_475 / 9_825.0 * Math.exp(-margin)),
        row.need(RESTRICTED_MEAN.upper()),
        0.01);
    assertEquals(4L, row.need(EVENTS));
    assertEquals("too-few", row.need(VERDICT));
  }

  @Test
  void sharesAreOfIntervalsEndedUpToAndAtThePolicyInterval() {
    TableRow row = runningIntervals().fleet().only();
    // 1/6 at 7,600; 5/6 x 1/5 at 8,200, the policy interval itself. Source: Aalen and Johansen
    // 1978.
    assertEquals(1 / 6.0, row.need(PLANNED_SHARE), 1e-12);
    assertEquals(1 / 6.0, row.need(BREAKDOWN_SHARE), 1e-12);
    assertEquals(0.0, row.need(CONDITION_SHARE));
    assertEquals(4 / 6.0, row.need(BEYOND_INTERVAL_SHARE), 1e-12);
  }

  @Test
  void theMeanIsEmptyWhileSurvivalIsNotKnownToTheHorizon() {
    // Bunting's longest interval, 9,800 h, still runs: nothing is known from there to 12,300 h.
    TableRow row = runningIntervals().stratum("vessel", "bunting").only();
    assertEquals(Optional.empty(), row.find(RESTRICTED_MEAN.estimate()));
    assertEquals(12_300.0, row.need(RESTRICTED_TO));
    // 8,200 of four at risk, 9,100 of two: after 6,000 left, S = 2/3 and then 1/3.
    assertEquals(9_100.0, row.need(KM_MEDIAN.estimate()));
    assertEquals(1 / 3.0, row.need(BREAKDOWN_SHARE), 1e-12);
  }

  @Test
  void theMedianIsEmptyWhereNotReached() {
    TableRow row =
        fleet(
            engine("auklet")
                .completed(INJECTOR, Reason.PLANNED, 7_000)
                .stillRunning(INJECTOR, 8_500, 9_000));
    assertEquals(Optional.empty(), row.find(KM_MEDIAN.estimate()));
    assertEquals(2 / 3.0, row.need(BEYOND_INTERVAL_SHARE), 1e-12);
  }

  @Test
  void limitsAreEmptyWhereNothingVaries() {
    TableRow row = fleet(engine("auklet").completed(INJECTOR, Reason.PLANNED, 9_000));
    assertEquals(9_000.0, row.need(RESTRICTED_MEAN.estimate()));
    assertEquals(Optional.empty(), row.find(RESTRICTED_MEAN.lower()));
    assertEquals(Optional.empty(), row.find(RESTRICTED_MEAN.upper()));
  }

  @Test
  void withoutAStartSeenThereIsNoFigure() {
    TableRow row = fleet(engine("auklet").startUnseen(INJECTOR, Optional.of(Reason.PLANNED)));
    assertEquals(1L, row.need(START_UNKNOWN));
    assertEquals(0L, row.need(EVENTS));
    assertEquals("insufficient", row.need(VERDICT));
    for (TableColumn<Double> column :
        List.of(
            NAIVE_MEAN,
            KM_MEDIAN.estimate(),
            RESTRICTED_MEAN.estimate(),
            PLANNED_SHARE,
            BEYOND_INTERVAL_SHARE)) {
      assertEquals(Optional.empty(), row.find(column), column.name());
    }
  }

  @Test
  void fiveCompletedIntervalsAreEnough() {
    TableRow row = fleet(engine("auklet").completed(INJECTOR, Reason.PLANNED, 1, 2, 3, 4, 5));
    assertEquals("ok", row.need(VERDICT));
    assertEquals(3.0, row.need(NAIVE_MEAN));
    assertEquals(3.0, row.need(KM_MEDIAN.estimate()));
  }

  @Test
  void clocksAreKeptApartAndOnlySinceStart() {
    TestMachine machine =
        engine("auklet")
            .completed(INJECTOR, Reason.PLANNED, 7_000)
            .itemInterval(INJECTOR, 6_500, Reason.PLANNED);
    Rows rows =
        Rows.of(SPEC, machine.alone()).where(SharedColumns.COMPONENT, INJECTOR.name()).fleet();
    assertEquals(List.of("position", "item"), rows.each(CLOCK));
    assertEquals(List.of(7_000.0, 6_500.0), rows.each(NAIVE_MEAN));
    assertEquals(Set.of("since-start"), Set.copyOf(rows.each(SharedColumns.WINDOW)));
  }

  @Test
  void evidenceIsThatOfTheComponentSinceStart() {
    TableRow row =
        fleet(
            engine("auklet")
                .observed("2022-04-06", "2024-12-31")
                .running(20)
                .visit(INJECTOR, "2023-03-01", Reason.PLANNED, opened(NOZZLE, Condition.WORKING))
                .visit(INJECTOR, "2023-03-02", Reason.TEST_ONLY)
                .visit(INJECTOR, "2023-03-03", Reason.BREAKDOWN));
    assertEquals(200_000.0, row.need(EXPOSURE));
    assertEquals(2L, row.need(ELIGIBLE));
    assertEquals(1L, row.need(INSPECTED));
  }

  @Test
  void intervalsTiedToATenthOfAnHourEndTogether() {
    // 7,000.1 h twice among three: one step to 1/3, so the median is there.
    TestMachine machine = engine("auklet").stillRunning(INJECTOR, 7_001);
    for (int time = 0; time < 2; time++) {
      machine.interval(
          INJECTOR, Optional.of(RunningHours.ofTenths(70_001)), Optional.of(Reason.PLANNED));
    }
    TableRow row = fleet(machine);
    assertEquals(7_000.1, row.need(KM_MEDIAN.estimate()));
    assertEquals(7_000.1, row.need(NAIVE_MEAN));
    assertFalse(row.find(RESTRICTED_MEAN.estimate()).isPresent());
    assertTrue(row.find(BEYOND_INTERVAL_SHARE).isEmpty());
  }
}
