package leadline.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import leadline.stats.FitCheck.Checked;
import leadline.stats.FitCheck.Insufficient;
import leadline.stats.FitCheck.Why;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class FitCheckTest {

  private static final int SIMULATIONS = 99;

  /**
   * Source: Stephens 1974, J. Am. Stat. Assoc. 69:730 (from memory): for exponential lives with the
   * mean estimated, W^2 (1 + 0.16 / n) exceeds 0.177 with a chance of 10 % and 0.224 with 5 %;
   * 200,000 samples of 30 drawn with R 4.2.2 gave 0.175 and 0.221, and a chance of 6.99 % to reach
   * the distance of these lives, the quantiles of a Weibull distribution of shape 1.45.
   */
  @Test
  void completeExponentialLivesHaveTheDistanceOfCramerAndVonMises() {
    int count = 30;
    double[] ages = weibullQuantiles(count, 1.45);
    double mean = IntStream.range(0, count).mapToDouble(index -> ages[index]).sum() / count;
    double expected = 1 / (12.0 * count);
    for (int index = 0; index < count; index++) {
      double difference = (2 * index + 1) / (2.0 * count) + Math.expm1(-ages[index] / mean);
      expected += difference * difference;
    }
    LifeData data =
        LifeData.of(IntStream.range(0, count).mapToObj(i -> Life.failedAt(ages[i])).toList());
    Checked checked = (Checked) FitCheck.of(LifeDistribution.EXPONENTIAL, data, 1999, 1);
    assertEquals(0.1972484, expected, 1e-7);
    assertEquals(expected, checked.statistic(), 1e-9);
    assertEquals(0.069875, checked.p(), 4 * checked.standardErrorOfP());
    assertEquals(Math.sqrt(0.07 * 0.93 / 1999), checked.standardErrorOfP(), 0.001);
  }

  private static double[] weibullQuantiles(int count, double shape) {
    return IntStream.range(0, count)
        .mapToDouble(i -> Math.pow(-Math.log1p(-(i + 0.5) / count), 1 / shape))
        .toArray();
  }

  /** By hand: all inspected at three ages; the estimate is the share failed at each. */
  @Test
  void theDistanceOfInspectedLivesByHand() {
    LifeData.Builder lives = new LifeData.Builder();
    int[] failed = {2, 4, 7};
    for (int age = 1; age <= 3; age++) {
      lives.add(Life.failedBetween(0, age), failed[age - 1]);
      lives.add(Life.outlived(age), 10 - failed[age - 1]);
    }
    LifeData data = lives.build();
    KnownShapeFit fit = KnownShapeFit.of(1, data).fit().orElseThrow();
    double expected = 0;
    double before = 0;
    double shareBefore = 0;
    for (int age = 1; age <= 3; age++) {
      double share = failed[age - 1] / 10.0;
      double after = share + Math.expm1(-age / fit.mean());
      expected +=
          30 * (share - shareBefore) * (before * before + before * after + after * after) / 3;
      before = after;
      shareBefore = share;
    }
    assertEquals(expected, CurveDistance.between(data, fit), 1e-9);
  }

  /**
   * Source of the law: the definition of a p value. Of 150 data sets from the distribution itself,
   * those with p at most 0.1 number 15, give or take three binomial standard deviations of 3.7.
   */
  @ParameterizedTest
  @EnumSource
  void livesOfTheDistributionAreRejectedAsOftenAsStated(Watching watching) {
    Random random = new Random(11);
    int rejected = 0;
    int sets = 150;
    for (int set = 0; set < sets; set++) {
      LifeData data = watching.lives(random, 30, 2);
      if (FitCheck.of(LifeDistribution.WEIBULL, data, SIMULATIONS, set) instanceof Checked checked
          && checked.p() <= 0.1) {
        rejected++;
      }
    }
    System.out.println("SIZE " + watching + " " + rejected);
    assertTrue(rejected >= 4 && rejected <= 26, rejected + " of " + sets);
  }

  /** Wear that is sharp is not exponential. */
  @ParameterizedTest
  @EnumSource
  void anotherDistributionIsFound(Watching watching) {
    LifeData data = watching.lives(new Random(3), 100, 4);
    Checked wrong = (Checked) FitCheck.of(LifeDistribution.EXPONENTIAL, data, SIMULATIONS, 1);
    Checked right = (Checked) FitCheck.of(LifeDistribution.WEIBULL, data, SIMULATIONS, 1);
    assertEquals(0.01, wrong.p());
    assertTrue(right.p() > 0.05, right.toString());
    assertTrue(right.statistic() < wrong.statistic());
  }

  /** How lives of 10,000 h by a Weibull distribution are watched. */
  private enum Watching {
    UNTIL_AN_AGE,
    AT_INSPECTIONS,
    ONCE;

    private Life of(double end, Random random) {
      return switch (this) {
        case UNTIL_AN_AGE -> {
          double age = 6000 + 8000 * random.nextDouble();
          yield end > age ? Life.outlived(age) : Life.failedAt(end);
        }
        case AT_INSPECTIONS -> {
          double before = Math.floor(end / 3000) * 3000;
          double last = 3000 * (2 + random.nextInt(4));
          yield end > last ? Life.outlived(last) : Life.failedBetween(before, before + 3000);
        }
        case ONCE -> {
          double age = 2000 + 12_000 * random.nextDouble();
          yield end > age ? Life.outlived(age) : Life.failedBetween(0, age);
        }
      };
    }

    private LifeData lives(Random random, int count, double shape) {
      List<Life> lives = new ArrayList<>();
      while (lives.size() < count) {
        double end = 10_000 * Math.pow(-Math.log1p(-random.nextDouble()), 1 / shape);
        lives.add(of(end, random));
      }
      return LifeData.of(lives);
    }
  }

  @ParameterizedTest
  @EnumSource
  void theSameStartGivesTheSameWhateverTheOrderAndTheUnit(LifeDistribution distribution) {
    List<Life> lives = new ArrayList<>(RandomLives.watchedFromNew(new Random(2)));
    FitCheck check = FitCheck.of(distribution, LifeData.of(lives), 19, 5);
    assertTrue(check instanceof Checked, check.toString());
    Collections.shuffle(lives, new Random(1));
    assertEquals(check, FitCheck.of(distribution, LifeData.of(lives), 19, 5));
  }

  @Test
  void whatCannotBeCheckedSaysWhy() {
    LifeData.Builder twoAges =
        new LifeData.Builder()
            .add(Life.failedBetween(0, 4000), 2)
            .add(Life.outlived(4000), 8)
            .add(Life.failedBetween(0, 8000), 5)
            .add(Life.outlived(8000), 5);
    assertEquals(Why.SATURATED, why(LifeDistribution.WEIBULL, twoAges.build()));
    assertTrue(
        FitCheck.of(LifeDistribution.EXPONENTIAL, twoAges.build(), 19, 1) instanceof Checked);
    assertEquals(
        Why.WEIGHTS_NOT_COUNTS,
        why(LifeDistribution.EXPONENTIAL, twoAges.add(Life.outlived(4000), 0.5).build()));
    assertEquals(
        Why.DELAYED_ENTRY,
        why(
            LifeDistribution.EXPONENTIAL,
            twoAges.add(Life.failedAt(900).enteredAt(100), 0.5).build()));
    assertEquals(
        Why.NO_FIT,
        why(
            LifeDistribution.GAMMA,
            LifeData.of(List.of(Life.outlived(900), Life.outlived(700), Life.outlived(800)))));
    assertThrows(
        IllegalArgumentException.class,
        () -> FitCheck.of(LifeDistribution.WEIBULL, LifeData.of(List.of()), 18, 1));
  }

  private static Why why(LifeDistribution distribution, LifeData data) {
    return ((Insufficient) FitCheck.of(distribution, data, 19, 1)).why();
  }
}
