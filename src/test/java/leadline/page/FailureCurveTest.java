package leadline.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import leadline.page.FailureCurve.Chance;
import leadline.publish.PublishedTable;
import leadline.summary.EvidenceColumns;
import leadline.summary.SharedColumns;
import leadline.summary.SpringSurvival;
import leadline.summary.TableRow;
import org.junit.jupiter.api.Test;

/** Chances worked out by hand from an invented table. */
class FailureCurveTest {

  private static final double EXACT = 1e-12;

  private final List<TableRow> rows = new ArrayList<>();
  private final FailureCurve curve = curve();

  private void point(double age, double share, double lower, double upper, String extrapolated) {
    rows.add(
        SpringSurvival.SPEC
            .row()
            .with(SharedColumns.MONTH, "2024-12")
            .with(SharedColumns.KNOWN_AT, Fleets.KNOWN_AT)
            .with(SharedColumns.COMPONENT, "fuel-injector")
            .with(SharedColumns.PART, "nrv-spring")
            .with(SharedColumns.LEVEL, "fleet")
            .with(SharedColumns.STRATUM, "all")
            .with(SharedColumns.WINDOW, "since-start")
            .with(SpringSurvival.METHOD, "weibull")
            .with(SpringSurvival.AGE, age)
            .with(SpringSurvival.BROKEN_BY.estimate(), share)
            .with(SpringSurvival.BROKEN_BY.lower(), lower)
            .with(SpringSurvival.BROKEN_BY.upper(), upper)
            .with(SpringSurvival.LIMITS_BY, "profile-likelihood")
            .with(SpringSurvival.FAILURES, 54L)
            .with(SpringSurvival.OPENINGS, 120L)
            .with(SpringSurvival.EXTRAPOLATED, extrapolated)
            .with(EvidenceColumns.EVENTS, 54L)
            .with(EvidenceColumns.INSPECTED, 120L)
            .with(EvidenceColumns.ELIGIBLE, 300L)
            .with(EvidenceColumns.VERDICT, "ok")
            .build());
  }

  private FailureCurve curve() {
    point(4_000, 0.05, 0.02, 0.10, "no");
    point(8_000, 0.15, 0.10, 0.22, "no");
    point(9_000, 0.20, 0.11, 0.40, "yes");
    Tables tables = new Tables(List.of(new PublishedTable(SpringSurvival.SPEC, rows)));
    return FailureCurve.of(tables, "fuel-injector", "nrv-spring");
  }

  private static void assertChance(double estimate, double lower, double upper, Chance found) {
    assertEquals(estimate, found.estimate(), EXACT);
    assertEquals(lower, found.lower(), EXACT);
    assertEquals(upper, found.upper(), EXACT);
  }

  @Test
  void atAPublishedAgeItIsThePublishedChance() {
    assertChance(0.15, 0.10, 0.22, curve.by(8_000, 0).orElseThrow());
  }

  @Test
  void betweenTwoAgesTheLimitsEncloseBoth() {
    assertChance(0.10, 0.02, 0.22, curve.by(6_000, 0).orElseThrow());
    assertChance(0.025, 0, 0.10, curve.by(2_000, 0).orElseThrow());
  }

  @Test
  void whatWasShownToWorkCountsFromThen() {
    // (0.15 - 0.05) / 0.95; (0.10 - 0.10) / 0.90; (0.22 - 0.02) / 0.98
    assertChance(0.10 / 0.95, 0, 0.20 / 0.98, curve.by(8_000, 4_000).orElseThrow());
  }

  @Test
  void beyondTheAgesOnRecordThereIsNone() {
    assertEquals(8_000, curve.longest());
    assertTrue(curve.by(8_001, 0).isEmpty());
  }

  @Test
  void withoutATableTheVerdictStandsInItsPlace() {
    FailureCurve none = FailureCurve.of(new Tables(List.of()), "fuel-injector", "nrv-spring");
    assertTrue(none.points().isEmpty());
    assertEquals("insufficient", none.refusal());
  }
}
