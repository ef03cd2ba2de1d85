package leadline.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import leadline.stats.FitOutcome.NoFiniteMaximum;
import leadline.stats.OneSidedLimit.ScaleAtLeast;
import org.junit.jupiter.api.Test;

/** Fits to data that were published, or can be worked out by hand. */
class PublishedFitsTest {

  private static final Confidence NINETY_FIVE = Confidence.of(0.95);

  /**
   * Source: Nelson 1982, Applied Life Data Analysis, p. 409: 432 turbine wheels, each inspected
   * once for cracks; age in 100 h, cracked, sound.
   */
  private static final int[][] WHEELS = {
    {4, 0, 39},
    {10, 4, 49},
    {14, 2, 31},
    {18, 7, 66},
    {22, 5, 25},
    {26, 9, 30},
    {30, 9, 33},
    {34, 6, 7},
    {38, 22, 12},
    {42, 21, 19},
    {46, 21, 15}
  };

  /** Source of the expected values: survreg of the R package survival, on the same data. */
  @Test
  void turbineWheelsInspectedOnce() {
    LifeData.Builder wheels = new LifeData.Builder();
    for (int[] opened : WHEELS) {
      addOpened(wheels, opened[0], opened[1], opened[2]);
    }
    LifeFit fit = weibull(wheels.build());
    assertEquals(2.176, fit.estimate(LifeQuantity.shape()), 0.0005);
    assertEquals(46.78, fit.estimate(LifeQuantity.scale()), 0.005);
  }

  /**
   * A spring that breaks unseen, invented. With one opening age the rate is -log(34/40)/8000, its
   * limits those of the binomial share put through the same formula (Clopper and Pearson 1934); the
   * likelihood limits asked for here lie within those.
   */
  @Test
  void aHiddenSpringOpenedAtOneAge() {
    LifeData data = addOpened(new LifeData.Builder(), 8000, 6, 34).build();
    KnownShapeFit fit = knownShape(1, data);
    assertEquals(20.3e-6, 1 / fit.mean(), 0.05e-6);
    assertEquals(-8000 / Math.log(34 / 40.0), fit.mean(), 1e-6);
    Limits exact = new Proportion(6, 40).clopperPearson(NINETY_FIVE);
    assertEquals(7.3e-6, -Math.log1p(-exact.lower()) / 8000, 0.05e-6);
    assertEquals(44.3e-6, -Math.log1p(-exact.upper()) / 8000, 0.05e-6);
    Limits mean = fit.profileLimits(LifeQuantity.mean(), NINETY_FIVE);
    assertTrue(1 / mean.upper() > 7.3e-6 && 1 / mean.lower() < 44.3e-6);
  }

  /**
   * Two opening ages and two parameters: the fitted shares are the observed ones, so that shape and
   * scale follow by hand from log(-log S) at both ages.
   */
  @Test
  void aHiddenSpringOpenedAtTwoAges() {
    LifeData.Builder openings = addOpened(new LifeData.Builder(), 8000, 6, 34);
    LifeFit fit = weibull(addOpened(openings, 16_000, 8, 12).build());
    double shape = Math.log(Math.log(12 / 20.0) / Math.log(34 / 40.0)) / Math.log(2);
    assertEquals(shape, fit.estimate(LifeQuantity.shape()), 1e-9);
    assertEquals(1.652, fit.estimate(LifeQuantity.shape()), 0.0005);
    assertEquals(24_030, fit.estimate(LifeQuantity.scale()), 5);
    assertEquals(21_480, fit.estimate(LifeQuantity.mean()), 5);
    assertEquals(34 / 40.0, fit.estimate(LifeQuantity.survivalAt(8000)), 1e-9);
    assertEquals(
        1 - 12 / 20.0 / (34 / 40.0), fit.estimate(LifeQuantity.failureWithin(8000, 8000)), 1e-9);
  }

  /**
   * Source of the formulas: Nelson 1985, J. Qual. Technol. 17:140; IEC 61649. Scale = (sum of
   * age^shape / failures)^(1/shape); lower limit by chi-squared with 2r + 2 degrees of freedom.
   */
  @Test
  void fewFailuresWithAShapeAssumed() {
    LifeData data =
        new LifeData.Builder()
            .add(Life.failedAt(6000), 1)
            .add(Life.failedAt(9500), 1)
            .add(Life.outlived(8000), 8)
            .build();
    assertEquals(17_864, knownShape(2, data).scale(), 0.5);
    assertEquals(10_069, knownShape(2, data).lowerLimit(NINETY_FIVE), 0.5);
    assertEquals(39_750, knownShape(1, data).scale(), 0.5);
    assertEquals(23_304, knownShape(1.5, data).scale(), 0.5);
    assertEquals(13_724, knownShape(3, data).scale(), 0.5);
  }

  /**
   * Source: Nelson 1985: without a failure the lower limit is (sum of age^shape / 3.0)^(1/shape).
   */
  @Test
  void noFailureWithAShapeAssumed() {
    LifeData data = new LifeData.Builder().add(Life.outlived(8000), 10).build();
    var outcome = (NoFiniteMaximum<KnownShapeFit>) KnownShapeFit.of(2, data);
    assertEquals(FitOutcome.Reason.NO_FAILURE, outcome.reason());
    var limit = (ScaleAtLeast) outcome.limits().apply(NINETY_FIVE).orElseThrow();
    assertEquals(14_616, limit.scale(), 0.5);
    assertEquals(8000 * Math.sqrt(10 / -Math.log(0.05)), limit.scale(), 1e-8);
  }

  /**
   * Source of the formulas: Meeker and Escobar 1998, Statistical Methods for Reliability Data,
   * chapter 11; Lawless 2003: with delayed entry, exposure counts from entry, and a power of age is
   * taken from it. Ignoring the entry gives 55.6 per million hours and 13,000 h.
   */
  @Test
  void livesKnownOnlyFromAnAge() {
    LifeData data =
        LifeData.of(
            List.of(
                Life.failedAt(9000).enteredAt(5000),
                Life.outlived(7000),
                Life.failedAt(8000).enteredAt(3000),
                Life.outlived(12_000).enteredAt(6000)));
    assertEquals(90.9e-6, 1 / knownShape(1, data).mean(), 0.05e-6);
    assertEquals(2 / 22_000.0, 1 / knownShape(1, data).mean(), 1e-15);
    assertEquals(11_576, knownShape(2, data).scale(), 0.5);
  }

  private static LifeData.Builder addOpened(
      LifeData.Builder builder, double age, int broken, int sound) {
    if (broken > 0) {
      builder.add(Life.failedBetween(0, age), broken);
    }
    return builder.add(Life.outlived(age), sound);
  }

  private static LifeFit weibull(LifeData data) {
    return LifeFit.of(LifeFamily.WEIBULL, data).fit().orElseThrow();
  }

  private static KnownShapeFit knownShape(double shape, LifeData data) {
    return KnownShapeFit.of(shape, data).fit().orElseThrow();
  }
}
