package leadline.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class ClusterBootstrapTest {

  private static final Confidence USUAL = Confidence.of(0.95);

  /** Source: Efron and Tibshirani 1993, section 5.2: the error of a mean, with divisor n. */
  @Test
  void limitsOfAMeanAreNearlyNormal() {
    SortedMap<Integer, Double> vessels = new TreeMap<>();
    double[] values = new Random(2).doubles(60).toArray();
    double sum = 0;
    double squares = 0;
    for (int vessel = 0; vessel < values.length; vessel++) {
      vessels.put(vessel, values[vessel]);
      sum += values[vessel];
      squares += values[vessel] * values[vessel];
    }
    double mean = sum / values.length;
    double error = Math.sqrt((squares / values.length - mean * mean) / values.length);
    Limits limits =
        new ClusterBootstrap(20_000, 1)
            .limits(vessels, ClusterBootstrapTest::mean, USUAL)
            .orElseThrow();
    assertEquals(mean - 1.96 * error, limits.lower(), 0.1 * error);
    assertEquals(mean + 1.96 * error, limits.upper(), 0.1 * error);
  }

  /** Source: the definition of limits, and of a sequence of random numbers with a given start. */
  @Test
  void limitsWidenWithConfidenceAndComeAgain() {
    SortedMap<String, Double> vessels = new TreeMap<>();
    List.of("d", "b", "a", "c").forEach(name -> vessels.put(name, (double) name.charAt(0)));
    ClusterBootstrap bootstrap = new ClusterBootstrap(999, 5);
    var limits = bootstrap.limits(vessels, ClusterBootstrapTest::mean, USUAL);
    Limits narrow =
        bootstrap.limits(vessels, ClusterBootstrapTest::mean, Confidence.of(0.5)).orElseThrow();
    assertEquals(limits, bootstrap.limits(vessels, ClusterBootstrapTest::mean, USUAL));
    assertTrue(limits.orElseThrow().lower() < narrow.lower());
    assertTrue(narrow.upper() < limits.orElseThrow().upper());
  }

  @Test
  void whatIsOftenUndefinedHasNoLimits() {
    SortedMap<String, Double> vessels = new TreeMap<>();
    vessels.put("a", 1.0);
    ClusterBootstrap bootstrap = new ClusterBootstrap(200, 1);
    assertEquals(Optional.empty(), bootstrap.limits(vessels, ClusterBootstrapTest::mean, USUAL));
    vessels.put("b", 2.0);
    assertEquals(
        Optional.empty(),
        bootstrap.limits(
            vessels,
            drawn -> drawn.get(0) > 1 ? OptionalDouble.empty() : OptionalDouble.of(1),
            USUAL));
    assertThrows(IllegalArgumentException.class, () -> new ClusterBootstrap(99, 1));
  }

  private static OptionalDouble mean(List<Double> drawn) {
    return drawn.stream().mapToDouble(Double::doubleValue).average();
  }
}
