package leadline.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import leadline.fleet.Catalogue;
import leadline.fleet.Component;
import leadline.fleet.PositionsPer;
import leadline.fleet.Reason;
import leadline.history.OverhaulInterval.Subject;
import leadline.quantity.RunningHours;
import leadline.summary.ComponentRates;
import leadline.summary.EvidenceColumns;
import leadline.summary.Level;
import leadline.summary.OverhaulIntervals;
import leadline.summary.SharedColumns;
import leadline.summary.SpringBreakage;
import leadline.summary.SpringSurvival;
import leadline.summary.TableRow;
import leadline.summary.TableSpec;
import leadline.summary.Verdict;
import leadline.summary.Window;
import org.junit.jupiter.api.Test;

/** Texts written down by hand from invented rows. */
class MonthInWordsTest {

  private final List<TableRow> rates = new ArrayList<>();
  private final List<TableRow> intervals = new ArrayList<>();
  private final List<TableRow> springs = new ArrayList<>();
  private final List<TableRow> lives = new ArrayList<>();

  @Test
  void aFleetWithEnoughEvents() {
    addBreakdowns("fuel-injector", Window.TWELVE_MONTHS, 9, 40_000, 225, 102.9, 427.1);
    addBreakdowns("fuel-injector", Window.SINCE_START, 38, 179_300.5, 211.9, 150, 290.9);
    addBreakdowns("exhaust-valve", Window.SINCE_START, 5, 2_000_000, 2.5, 0.81, 5.83);
    intervals.add(
        row(OverhaulIntervals.SPEC, "fuel-injector", Window.SINCE_START, 210, 310, Verdict.OK)
            .with(OverhaulIntervals.CLOCK, Subject.POSITION.word())
            .with(OverhaulIntervals.COMPLETED, 210L)
            .with(OverhaulIntervals.RUNNING, 96L)
            .with(OverhaulIntervals.START_UNKNOWN, 34L)
            .with(OverhaulIntervals.NAIVE_MEAN, 6_240.4)
            .with(OverhaulIntervals.KM_MEDIAN.estimate(), 8_120.0)
            .with(OverhaulIntervals.KM_MEDIAN.lower(), 7_900.0)
            .with(OverhaulIntervals.RESTRICTED_MEAN.estimate(), 7_950.0)
            .with(OverhaulIntervals.RESTRICTED_MEAN.lower(), 7_600.0)
            .with(OverhaulIntervals.RESTRICTED_MEAN.upper(), 8_300.0)
            .with(OverhaulIntervals.RESTRICTED_TO, 12_000.0)
            .with(OverhaulIntervals.POLICY_INTERVAL, 8_000.0)
            .build());
    springs.add(
        spring(120, 310, 22, Verdict.SELECTIVE_OPENING)
            .with(SpringBreakage.BROKEN_SHARE.estimate(), 22 / 120.0)
            .with(SpringBreakage.BROKEN_SHARE.lower(), 0.119)
            .with(SpringBreakage.BROKEN_SHARE.upper(), 0.2644)
            .with(SpringBreakage.SHARE_IF_UNOPENED_SOUND, 22 / 310.0)
            .with(SpringBreakage.SHARE_IF_UNOPENED_BROKEN, 212 / 310.0)
            .build());
    lives.add(
        row(SpringSurvival.SPEC, "fuel-injector", Window.SINCE_START, 66, 310, Verdict.OK)
            .with(SharedColumns.PART, "nrv-spring")
            .with(SpringSurvival.METHOD, "weibull")
            .with(SpringSurvival.AGE, 8_000.0)
            .with(SpringSurvival.BROKEN_BY.estimate(), 0.123)
            .with(SpringSurvival.BROKEN_BY.lower(), 0.07)
            .with(SpringSurvival.BROKEN_BY.upper(), 0.18)
            .with(SpringSurvival.LIMITS_BY, "profile-likelihood")
            .with(SpringSurvival.FAILURES, 66L)
            .with(SpringSurvival.OPENINGS, 120L)
            .with(SpringSurvival.EXTRAPOLATED, "no")
            .build());
    assertEquals(
        """
        2024-12: the fleet since its records began, known at 2025-01-10T12:00:00Z, 95 %
          limits in brackets
        fuel-injector breakdowns per million h: 212 (150 to 291); 38 in 179,301 h; ok
          MTBO: median 8,120 h (7,900 h or more); mean up to 12,000 h: 7,950 h (7,600 h
            to 8,300 h); naive mean 6,240 h; 210 completed, 96 running; ok
          nrv-spring: opened at 120 of 310 overhauls, 22 broken; of those opened 18.3 %
            (11.9 % to 26.4 %); of all 7.1 % if the unopened were sound, 68.4 % if
            broken; selective-opening: not opened as a routine, so no share of all
          nrv-spring broken by 8,000 h since new: 12.3 % (7.0 % to 18.0 %), by weibull;
            66 springs known to have broken; ok
        exhaust-valve breakdowns per million h: 2.50 (0.81 to 5.83); 5 in 2,000,000 h;
          ok
        records: 2 rows refused; 3 problems and questions for the vessels
        Statistics from incomplete records: on their own never a reason to lengthen an
          interval. The maker's instructions, class and flag prevail.
        """,
        text());
  }

  @Test
  void whatTheRecordsDoNotSupportIsSaid() {
    addBreakdowns("fuel-injector", Window.SINCE_START, 1, 60_000.0, 16.67, 0.42, 92.9);
    intervals.add(
        row(OverhaulIntervals.SPEC, "fuel-injector", Window.SINCE_START, 0, 4, Verdict.INSUFFICIENT)
            .with(OverhaulIntervals.CLOCK, Subject.POSITION.word())
            .with(OverhaulIntervals.COMPLETED, 0L)
            .with(OverhaulIntervals.RUNNING, 0L)
            .with(OverhaulIntervals.START_UNKNOWN, 12L)
            .with(OverhaulIntervals.RESTRICTED_TO, 12_000.0)
            .with(OverhaulIntervals.POLICY_INTERVAL, 8_000.0)
            .build());
    springs.add(spring(0, 4, 0, Verdict.INSUFFICIENT).build());
    assertEquals(
        """
        2024-12: the fleet since its records began, known at 2025-01-10T12:00:00Z, 95 %
          limits in brackets
        fuel-injector breakdowns per million h: 16.7 (0.42 to 92.9); 1 in 60,000 h;
          too-few: fewer than 5 events, neither to rank nor to fit
          MTBO: median not known; mean up to 12,000 h: not known; naive mean not known;
            0 completed, 0 running; insufficient: nothing to divide by
          nrv-spring: opened at 0 of 4 overhauls, 0 broken; insufficient: nothing to
            divide by
        records: 2 rows refused; 3 problems and questions for the vessels
        Statistics from incomplete records: on their own never a reason to lengthen an
          interval. The maker's instructions, class and flag prevail.
        """,
        text());
  }

  @Test
  void aComponentWithoutOverhaulsIsLeftOut() {
    rates.add(breakdowns("fuel-injector", Window.SINCE_START, 0, 0, Verdict.INSUFFICIENT).build());
    assertTrue(text().lines().noneMatch(line -> line.contains("fuel-injector")));
  }

  private String text() {
    return MonthInWords.of(
        SampleIssue.manifest("run-1", "2024-12"),
        List.of(
            new PublishedTable(ComponentRates.SPEC, rates),
            new PublishedTable(OverhaulIntervals.SPEC, intervals),
            new PublishedTable(SpringBreakage.SPEC, springs),
            new PublishedTable(SpringSurvival.SPEC, lives)),
        new Catalogue(
            Stream.of("fuel-injector", "exhaust-valve").map(MonthInWordsTest::component).toList()));
  }

  private static Component component(String name) {
    return new Component(
        name, PositionsPer.PLACE, Set.of("main-engine"), RunningHours.ofHours(8_000), List.of());
  }

  private void addBreakdowns(
      String component,
      Window window,
      long events,
      double exposure,
      double rate,
      double lower,
      double upper) {
    Verdict verdict = events < 5 ? Verdict.TOO_FEW : Verdict.OK;
    rates.add(
        breakdowns(component, window, events, 310, verdict)
            .with(EvidenceColumns.EXPOSURE, exposure)
            .with(ComponentRates.RATE.estimate(), rate)
            .with(ComponentRates.RATE.lower(), lower)
            .with(ComponentRates.RATE.upper(), upper)
            .build());
  }

  private static TableRow.Builder breakdowns(
      String component, Window window, long events, long eligible, Verdict verdict) {
    return row(ComponentRates.SPEC, component, window, events, eligible, verdict)
        .with(ComponentRates.ENDPOINT, Reason.BREAKDOWN.word())
        .with(ComponentRates.VESSELS, 3L);
  }

  private static TableRow.Builder spring(
      long opened, long overhauled, long broken, Verdict verdict) {
    return row(
            SpringBreakage.SPEC, "fuel-injector", Window.SINCE_START, broken, overhauled, verdict)
        .with(SharedColumns.PART, "nrv-spring")
        .with(SharedColumns.HOURS_BAND, "all")
        .with(SpringBreakage.OVERHAULED, overhauled)
        .with(SpringBreakage.OPENED, opened)
        .with(SpringBreakage.BROKEN, broken);
  }

  private static TableRow.Builder row(
      TableSpec spec,
      String component,
      Window window,
      long events,
      long eligible,
      Verdict verdict) {
    return spec.row()
        .with(SharedColumns.MONTH, "2024-12")
        .with(SharedColumns.WINDOW, window.word())
        .with(SharedColumns.KNOWN_AT, SampleIssue.KNOWN_AT)
        .with(SharedColumns.LEVEL, Level.FLEET.word())
        .with(SharedColumns.STRATUM, "all")
        .with(SharedColumns.COMPONENT, component)
        .with(EvidenceColumns.EVENTS, events)
        .with(EvidenceColumns.INSPECTED, eligible)
        .with(EvidenceColumns.ELIGIBLE, eligible)
        .with(EvidenceColumns.VERDICT, verdict.word());
  }
}
