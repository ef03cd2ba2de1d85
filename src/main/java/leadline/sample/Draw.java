package leadline.sample;

import java.util.List;
import java.util.SplittableRandom;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * A stream of random draws that is the same on every machine. Only the generator's bits are taken
 * from the Java platform, and only strict mathematics is used, so that no digit depends on where
 * the program runs.
 */
final class Draw {

  private static final NormalDistribution NORMAL = new NormalDistribution();
  private static final long GOLDEN_GAMMA = 0x9E3779B97F4A7C15L;

  private final long key;
  private final SplittableRandom random;

  private Draw(long key) {
    this.key = key;
    this.random = new SplittableRandom(key);
  }

  static Draw of(long seed) {
    return new Draw(mixed(seed));
  }

  /** A stream of its own, whatever has been drawn from this one. */
  Draw branch(String name, int number) {
    return new Draw(mixed(key + GOLDEN_GAMMA * (31L * name.hashCode() + number + 1)));
  }

  Draw branch(String name) {
    return branch(name, 0);
  }

  /** Uniform between 0 and 1, and never either. */
  double uniform() {
    return ((random.nextLong() >>> 11) + 0.5) * 0x1p-53;
  }

  double between(double least, double most) {
    return least + (most - least) * uniform();
  }

  /** A whole number from 0 to one below the bound. */
  int below(int bound) {
    return (int) (uniform() * bound);
  }

  int among(int least, int most) {
    return least + below(most - least + 1);
  }

  boolean chance(double chance) {
    return uniform() < chance;
  }

  <T> T oneOf(List<T> choices) {
    return choices.get(below(choices.size()));
  }

  /** Exponential with mean 1. */
  double exponential() {
    return -StrictMath.log(uniform());
  }

  double normal(double mean, double deviation) {
    return mean + deviation * NORMAL.inverseCumulativeProbability(uniform());
  }

  /** The last step of SplitMix64 (Steele, Lea and Flood 2014, figure 17; from memory). */
  private static long mixed(long bits) {
    long once = (bits ^ (bits >>> 30)) * 0xBF58476D1CE4E5B9L;
    long twice = (once ^ (once >>> 27)) * 0x94D049BB133111EBL;
    return twice ^ (twice >>> 31);
  }
}
