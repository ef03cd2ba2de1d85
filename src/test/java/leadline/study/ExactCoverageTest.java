package leadline.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import leadline.stats.PoissonRate;
import leadline.stats.Proportion;
import org.junit.jupiter.api.Test;

class ExactCoverageTest {

  private static final int MOST = 100;

  /** Source: computed apart from this program for means of 1 to 10: 95.6 to 99.5. */
  @Test
  void garwoodLimitsOfARateCoverAtLeastTheirLevel() {
    var range = ExactCoverage.Range.over(1, 10, ExactCoverage.ofRate(PoissonRate::limits, MOST));
    assertEquals(95.6, range.least(), 0.1);
  }

  /** Source: computed apart from this program for means of 1 to 10: 91.6 to 99.0. */
  @Test
  void midPLimitsOfARateCoverTheirLevelOnAverageOnly() {
    var range =
        ExactCoverage.Range.over(1, 10, ExactCoverage.ofRate(PoissonRate::midPLimits, MOST));
    assertEquals(91.6, range.least(), 0.1);
    assertTrue(range.mean() > 95, () -> "on average: " + range.mean());
  }

  /** Source: Clopper and Pearson 1934: at least the level, whatever the share. */
  @Test
  void clopperPearsonLimitsCoverAtLeastTheirLevel() {
    var range =
        ExactCoverage.Range.over(0.01, 0.99, ExactCoverage.ofShare(Proportion::clopperPearson, 20));
    assertTrue(range.least() >= 95, () -> "least: " + range.least());
  }
}
