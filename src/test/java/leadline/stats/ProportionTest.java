package leadline.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ProportionTest {

  /** Source: (1 - p)^n = 0.025 solved for p, since no success has chance (1 - p)^n. */
  @Test
  void limitsOfNoSuccessAndOfNothingElse() {
    double upper = 1 - Math.pow(0.025, 1.0 / 20);
    Confidence confidence = Confidence.of(0.95);
    assertEquals(upper, new Proportion(0, 20).clopperPearson(confidence).upper(), 1e-14);
    assertEquals(0, new Proportion(0, 20).clopperPearson(confidence).lower());
    assertEquals(1 - upper, new Proportion(20, 20).clopperPearson(confidence).lower(), 1e-14);
    assertEquals(1, new Proportion(20, 20).clopperPearson(confidence).upper());
    assertEquals(0, new Proportion(0, 20).wilson(confidence).lower());
    assertEquals(1, new Proportion(20, 20).wilson(confidence).upper());
  }

  @ParameterizedTest
  @CsvSource({"0, 0", "-1, 5", "6, 5", "0, -3"})
  void impossibleCountsAreRefused(long successes, long trials) {
    assertThrows(IllegalArgumentException.class, () -> new Proportion(successes, trials));
  }

  /** Source: the definition of a confidence interval; success and failure are interchangeable. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void limitsEncloseTheShareWidenWithConfidenceAndMirror(long seed) {
    Random random = new Random(seed);
    for (int repeat = 0; repeat < 50; repeat++) {
      int trials = 1 + random.nextInt(300);
      Proportion share = new Proportion(random.nextInt(trials + 1), trials);
      Proportion mirrored = new Proportion(trials - share.successes(), trials);
      Confidence less = Confidence.of(0.05 + 0.9 * random.nextDouble());
      Confidence more = Confidence.of(less.level() + 0.04);
      List<Function<Confidence, Limits>> kinds = List.of(share::clopperPearson, share::wilson);
      for (Function<Confidence, Limits> limits : kinds) {
        Limits narrow = limits.apply(less);
        Limits wide = limits.apply(more);
        assertTrue(0 <= wide.lower() && wide.lower() <= narrow.lower());
        assertTrue(narrow.lower() <= share.share() && share.share() <= narrow.upper());
        assertTrue(narrow.upper() <= wide.upper() && wide.upper() <= 1);
      }
      assertEquals(
          share.clopperPearson(less).lower(), 1 - mirrored.clopperPearson(less).upper(), 1e-12);
      assertEquals(share.wilson(less).lower(), 1 - mirrored.wilson(less).upper(), 1e-12);
    }
  }
}
