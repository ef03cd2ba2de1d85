package leadline.stats;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Lives to fit a distribution to, equal ones counted together; the order in which they were added
 * makes no difference.
 */
public final class LifeData {

  /** Lives alike. */
  record Alike(Life life, double weight) {

    boolean failed() {
      return life.upper() < Double.POSITIVE_INFINITY;
    }
  }

  private static final Comparator<Alike> BY_AGES =
      Comparator.comparingDouble((Alike alike) -> alike.life().lower())
          .thenComparingDouble(alike -> alike.life().upper())
          .thenComparingDouble(alike -> alike.life().entry());

  private final List<Alike> lives;
  private final LogAges logAges;

  private LifeData(List<Alike> lives) {
    this.lives = lives;
    this.logAges = LogAges.of(lives);
  }

  /** Each life counted once. */
  public static LifeData of(Collection<Life> lives) {
    Builder builder = new Builder();
    lives.forEach(life -> builder.add(life, 1));
    return builder.build();
  }

  /** Gathers lives, each as often as its weight says. */
  public static final class Builder {

    private final Map<Life, Double> weights = new HashMap<>();

    /**
     * Adds lives alike to those gathered.
     *
     * @param weight how many lives are alike, finite and more than 0
     * @throws IllegalArgumentException if the weight is not finite and positive
     */
    public Builder add(Life life, double weight) {
      if (!(weight > 0 && Double.isFinite(weight))) {
        throw new IllegalArgumentException("a weight must be finite and more than 0: " + weight);
      }
      weights.merge(life, weight, Double::sum);
      return this;
    }

    /** The lives gathered so far. */
    public LifeData build() {
      List<Alike> lives = new ArrayList<>(weights.size());
      weights.forEach((life, weight) -> lives.add(new Alike(life, weight)));
      lives.sort(BY_AGES);
      return new LifeData(List.copyOf(lives));
    }
  }

  /** By lower age, then upper, then entry. */
  List<Alike> lives() {
    return lives;
  }

  LogAges logAges() {
    return logAges;
  }

  /** Each kind of life once, in the order of weights for {@link #reweighted}. */
  public List<Life> distinct() {
    return lives.stream().map(Alike::life).toList();
  }

  /**
   * The same lives, each counted as often as its weight says.
   *
   * @param weights in the order of {@link #distinct}, finite, 0 or more; at 0 it is left out
   */
  public LifeData reweighted(double[] weights) {
    List<Alike> weighted = new ArrayList<>(lives.size());
    for (int index = 0; index < weights.length; index++) {
      if (weights[index] > 0) {
        weighted.add(new Alike(lives.get(index).life(), weights[index]));
      }
    }
    return new LifeData(weighted);
  }

  /** Those known from new, without those known only because they lived beyond an age. */
  public LifeData knownFromNew() {
    return new LifeData(lives.stream().filter(alike -> alike.life().entry() == 0).toList());
  }

  public boolean isEmpty() {
    return lives.isEmpty();
  }

  /** How many lives are known to have ended. */
  public double failures() {
    return lives.stream().filter(Alike::failed).mapToDouble(Alike::weight).sum();
  }

  /** Whether every end is known to the age. */
  boolean hasOnlyExactFailures() {
    return lives.stream().noneMatch(alike -> alike.life() instanceof Life.FailedBetween);
  }

  /** Whether some life is known only because it lived beyond an age. */
  boolean hasDelayedEntry() {
    return lives.stream().anyMatch(alike -> alike.life().entry() > 0);
  }

  /** Time lived after entry up to the last age known alive, each age raised to a power. */
  double exposure(double power) {
    double sum = 0;
    for (Alike alike : lives) {
      Life life = alike.life();
      sum += alike.weight() * (Math.pow(life.lower(), power) - Math.pow(life.entry(), power));
    }
    return sum;
  }
}
