package leadline.study;

import java.util.Locale;
import java.util.Optional;
import leadline.stats.Limits;

/**
 * How often limits enclosed the true value.
 *
 * @param covered within
 * @param below the true value lay below the lower limit
 * @param above the true value lay above the upper limit
 * @param none there were no limits
 */
record Coverage(int covered, int below, int above, int none) {

  static final Coverage OF_NOTHING = new Coverage(0, 0, 0, 0);

  static Coverage of(Optional<Limits> limits, double truth) {
    return limits
        .map(
            found ->
                truth < found.lower()
                    ? new Coverage(0, 1, 0, 0)
                    : truth > found.upper() ? new Coverage(0, 0, 1, 0) : new Coverage(1, 0, 0, 0))
        .orElse(new Coverage(0, 0, 0, 1));
  }

  Coverage plus(Coverage other) {
    return new Coverage(
        covered + other.covered, below + other.below, above + other.above, none + other.none);
  }

  /** Of those with limits, in percent. */
  double share() {
    return 100.0 * covered / withLimits();
  }

  /** Where no limits count as limits that miss, in percent. */
  double shareOfAll() {
    return 100.0 * covered / (withLimits() + none);
  }

  /** In percent. */
  double shareWithout() {
    return 100.0 * none / (withLimits() + none);
  }

  private int withLimits() {
    return covered + below + above;
  }

  @Override
  public String toString() {
    return String.format(
        Locale.ROOT,
        "%.1f | %.1f | %.1f | %.1f | %.1f",
        share(),
        100.0 * below / withLimits(),
        100.0 * above / withLimits(),
        shareWithout(),
        shareOfAll());
  }
}
