package leadline.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PowerLawTest {

  /** Source: NIST/SEMATECH e-Handbook 8.4.5.2, ten repairs: b 0.4835, a 0.2913. */
  @Test
  void publishedShapeOfTenRepairs() {
    PowerLawGivenCounts exact =
        PowerLawGivenCounts.of(List.of(TrendTestTest.REPAIRS), Truncation.TIME).orElseThrow();
    assertEquals(.4835, exact.unbiasedShape().orElseThrow(), 5e-5);
    assertEquals(.2913, exact.lambdaOfUnbiasedShape().orElseThrow(), 5e-5);
  }

  /** Source: the definition of a maximum: no neighbour has a higher likelihood. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void noNeighbourIsLikelier(long seed) {
    Random random = new Random(seed);
    List<EventHistory> units = unequal(random);
    PowerLaw.Fitted fit = fitted(units);
    assertEquals(logLikelihood(units, fit.shape(), fit.logLambda()), fit.logLikelihood(), 1e-8);
    for (double step : new double[] {-0.01, 0.01}) {
      assertTrue(
          logLikelihood(units, fit.shape() * (1 + step), fit.logLambda()) < fit.logLikelihood());
      assertTrue(logLikelihood(units, fit.shape(), fit.logLambda() + step) < fit.logLikelihood());
    }
    double curvature =
        2 * fit.logLikelihood() - profile(units, fit, 1e-3) - profile(units, fit, -1e-3);
    assertEquals(
        1e-3 / Math.sqrt(curvature),
        fit.logShapeStandardError(),
        1e-3 * fit.logShapeStandardError());
  }

  /** Highest over lambda, with the shape a little away from its best. */
  private static double profile(List<EventHistory> units, PowerLaw.Fitted fit, double step) {
    double shape = fit.shape() * Math.exp(step);
    double expected = 0;
    for (EventHistory unit : units) {
      expected += Math.pow(unit.end(), shape) - Math.pow(unit.start(), shape);
    }
    return logLikelihood(units, shape, Math.log(fit.events() / expected));
  }

  /** Source: Crow 1974: the sum of log intensities less the expected events. */
  private static double logLikelihood(List<EventHistory> units, double shape, double logLambda) {
    double sum = 0;
    for (EventHistory unit : units) {
      for (double event : unit.events()) {
        sum += logLambda + Math.log(shape) + (shape - 1) * Math.log(event);
      }
      sum -= Math.exp(logLambda) * (Math.pow(unit.end(), shape) - Math.pow(unit.start(), shape));
    }
    return sum;
  }

  /** Source: events of disjoint times are independent: a unit in two parts is the same unit. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void aUnitMayBeObservedInParts(long seed) {
    List<EventHistory> units = unequal(new Random(seed));
    List<EventHistory> parts = new ArrayList<>();
    for (EventHistory unit : units) {
      double cut = (unit.start() + unit.end()) / 2;
      parts.add(
          new EventHistory(
              unit.start(), cut, unit.events().stream().filter(event -> event <= cut).toList()));
      parts.add(
          new EventHistory(
              cut, unit.end(), unit.events().stream().filter(event -> event > cut).toList()));
    }
    assertEquals(fitted(units).shape(), fitted(parts).shape(), 1e-10);
    assertEquals(fitted(units).logLambda(), fitted(parts).logLambda(), 1e-9);
  }

  /** Source: time has no unit: lambda is events up to age 1, whatever 1 means. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void scalingTimeScalesLambda(long seed) {
    List<EventHistory> units = unequal(new Random(seed));
    PowerLaw.Fitted one = fitted(units);
    PowerLaw.Fitted other =
        fitted(units.stream().map(unit -> RandomHistories.scaled(unit, 1000)).toList());
    assertEquals(one.shape(), other.shape(), 1e-10);
    assertEquals(one.logLambda() - one.shape() * Math.log(1000), other.logLambda(), 1e-8);
    assertEquals(one.intensityAt(70) / 1000, other.intensityAt(70_000), 1e-9 * one.intensityAt(70));
  }

  /** Source: Crow 1974: with one end for all and a set time, n / sum ln(T / t). */
  @Test
  void oneEndForAllHasAClosedForm() {
    List<EventHistory> units =
        List.of(
            new EventHistory(0, 200, List.of(4.3, 10.2, 92.1)),
            new EventHistory(0, 200, List.of(0.1, 45.8)));
    double logs = 0;
    for (double event : new double[] {4.3, 10.2, 92.1, 0.1, 45.8}) {
      logs += Math.log(200 / event);
    }
    assertEquals(5 / logs, fitted(units).shape(), 1e-12);
    assertEquals(
        4 / logs,
        PowerLawGivenCounts.of(units, Truncation.TIME).orElseThrow().unbiasedShape().orElseThrow(),
        1e-12);
  }

  @Test
  void whereNoMaximumExistsTheFitSaysWhy() {
    assertEquals(PowerLaw.Unfit.NO_EVENT, PowerLaw.fit(List.of(new EventHistory(0, 9, List.of()))));
    assertEquals(
        PowerLaw.Unfit.SHAPE_WITHOUT_BOUND,
        PowerLaw.fit(
            List.of(new EventHistory(0, 9, List.of(9.0)), new EventHistory(0, 5, List.of()))));
    assertEquals(
        PowerLaw.Unfit.SHAPE_TOWARDS_ZERO,
        PowerLaw.fit(List.of(new EventHistory(1, 1000, List.of(1.1, 1.2, 1.3)))));
    assertInstanceOf(
        PowerLaw.Fitted.class,
        PowerLaw.fit(List.of(new EventHistory(1, 1000, List.of(500.0, 700.0)))));
  }

  /**
   * Given their number, events of a unit observed from later on are independent with the density
   * beta t^(beta - 1) / (end^beta - start^beta), 1 / (t ln(end / start)) towards a shape of 0; the
   * likelihood written out. Source: Crow 1974.
   */
  @Test
  void aShapeTowardsZeroHasAnUpperLimit() {
    double[] events = {1.1, 1.2, 1.3};
    List<EventHistory> units = List.of(new EventHistory(1, 1000, List.of(1.1, 1.2, 1.3)));
    double limit = PowerLaw.shapeAtMost(units, Confidence.of(0.95)).orElseThrow();
    double fall = 0;
    for (double event : events) {
      fall -= Math.log(event * Math.log(1000));
      fall -= Math.log(limit * Math.pow(event, limit - 1) / (Math.pow(1000, limit) - 1));
    }
    double root = 1.6448536269514722;
    assertEquals(root * root / 2, fall, 1e-9);
    assertTrue(limit < PowerLaw.shapeAtMost(units, Confidence.of(0.99)).orElseThrow());
    assertTrue(
        PowerLaw.shapeAtMost(List.of(new EventHistory(0, 9, List.of(4.0))), Confidence.of(0.95))
            .isEmpty());
  }

  /** Source: the definition of limits. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void limitsContainTheShapeAndWidenWithConfidence(long seed) {
    PowerLawGivenCounts exact =
        PowerLawGivenCounts.of(RandomHistories.units(new Random(seed), 4), Truncation.TIME)
            .orElseThrow();
    Limits narrow = exact.shapeLimits(Confidence.of(0.8));
    Limits wide = exact.shapeLimits(Confidence.of(0.95));
    double shape = exact.unbiasedShape().orElseThrow();
    assertTrue(wide.lower() < narrow.lower() && narrow.lower() < shape);
    assertTrue(shape < narrow.upper() && narrow.upper() < wide.upper());
  }

  @Test
  void exactStatementsNeedObservationFromZeroAndAnEventBeforeItsEnd() {
    assertEquals(
        Optional.empty(),
        PowerLawGivenCounts.of(
            List.of(new EventHistory(1, 9, List.of(2.0, 3.0))), Truncation.TIME));
    assertEquals(
        Optional.empty(),
        PowerLawGivenCounts.of(List.of(new EventHistory(0, 9, List.of(9.0))), Truncation.FAILURE));
    PowerLawGivenCounts one =
        PowerLawGivenCounts.of(List.of(new EventHistory(0, 9, List.of(2.0))), Truncation.TIME)
            .orElseThrow();
    assertEquals(OptionalDouble.empty(), one.unbiasedShape());
    assertEquals(OptionalDouble.empty(), one.lambdaOfUnbiasedShape());
    assertEquals(OptionalDouble.empty(), one.meanTimeOfUnbiasedShapeAt(9));
    assertEquals(OptionalDouble.empty(), one.cramerVonMisesP(100, 1));
  }

  /**
   * Source: IEC 61164: at 52 events a distance of 0.173 has a chance of one in ten (from memory).
   */
  @Test
  void distancesOfPowerLawsAreAsFrequentAsTheirChance() {
    Random random = new Random(11);
    List<Double> distances = new ArrayList<>();
    int rare = 0;
    for (int process = 0; process < 1000; process++) {
      List<Double> events = random.doubles(52).map(u -> 100 * Math.pow(u, 0.5)).boxed().toList();
      PowerLawGivenCounts exact =
          PowerLawGivenCounts.of(List.of(new EventHistory(0, 100, events)), Truncation.TIME)
              .orElseThrow();
      distances.add(exact.cramerVonMises().orElseThrow());
      rare += exact.cramerVonMisesP(200, process).orElseThrow() <= 0.1 ? 1 : 0;
    }
    distances.sort(Double::compare);
    assertEquals(0.173, distances.get(900), 0.012);
    assertEquals(100, rare, 30);
  }

  private static List<EventHistory> unequal(Random random) {
    List<EventHistory> units = new ArrayList<>(RandomHistories.units(random, 3));
    units.add(RandomHistories.unit(random, 200, 3000));
    units.add(new EventHistory(0, 800, List.of(20.0, 650.0)));
    return units;
  }

  private static PowerLaw.Fitted fitted(List<EventHistory> units) {
    return assertInstanceOf(PowerLaw.Fitted.class, PowerLaw.fit(units));
  }

  /** Source: units have no order, and time no unit. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void neitherOrderNorUnitMattersGivenCounts(long seed) {
    Random random = new Random(seed);
    List<EventHistory> units = RandomHistories.units(random, 5);
    List<EventHistory> altered = new ArrayList<>();
    units.forEach(unit -> altered.add(RandomHistories.scaled(unit, 1000)));
    Collections.shuffle(altered, random);
    PowerLawGivenCounts one = PowerLawGivenCounts.of(units, Truncation.TIME).orElseThrow();
    PowerLawGivenCounts other = PowerLawGivenCounts.of(altered, Truncation.TIME).orElseThrow();
    assertEquals(one.unbiasedShape().orElseThrow(), other.unbiasedShape().orElseThrow(), 1e-10);
    assertEquals(one.cramerVonMises().orElseThrow(), other.cramerVonMises().orElseThrow(), 1e-10);
    Collections.shuffle(altered, random);
    assertEquals(fitted(units).shape(), ((PowerLaw.Fitted) PowerLaw.fit(altered)).shape(), 1e-10);
  }
}
