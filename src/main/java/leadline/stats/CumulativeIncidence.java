package leadline.stats;

import java.util.Collections;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * The shares of durations ended by each of several causes that compete to end them. Source: Aalen
 * and Johansen 1978, Scandinavian Journal of Statistics 5:141.
 *
 * @param <C> the causes
 */
public final class CumulativeIncidence<C extends Comparable<? super C>> {

  /**
   * What had become of the durations by a time.
   *
   * @param endedBy the share ended by each cause that ended any, at whatever time, each 0 to 1
   * @param surviving the share still going on, the Kaplan-Meier estimate, 0 to 1; all shares
   *     together make 1
   */
  public record Shares<C>(NavigableMap<C, Double> endedBy, double surviving) {

    /** Makes the shares unmodifiable. */
    public Shares {
      endedBy = Collections.unmodifiableNavigableMap(new TreeMap<>(endedBy));
    }

    /** The share ended by a cause, 0 to 1; 0 for a cause that ended none. */
    public double endedBy(C cause) {
      return endedBy.getOrDefault(cause, 0.0);
    }
  }

  private final List<RiskSet> riskSets;
  private final NavigableMap<C, CountsByTime.InOrder> endedBy;
  private final KaplanMeier survival;

  private CumulativeIncidence(SurvivalTally<C> tally) {
    this.riskSets = tally.riskSets();
    this.endedBy = tally.endedBy();
    this.survival = KaplanMeier.of(tally);
  }

  /** Of all that the tally has counted so far; an empty tally knows nothing. */
  public static <C extends Comparable<? super C>> CumulativeIncidence<C> of(
      SurvivalTally<C> tally) {
    return new CumulativeIncidence<>(tally);
  }

  /**
   * Shares ended up to and including a time; empty when not known so far, as for {@link
   * KaplanMeier#survivalAt(double)}. Source: Aalen and Johansen 1978.
   *
   * @param time in the unit of the durations, 0 or more
   * @throws IllegalArgumentException if the time is negative or not a number
   */
  public Optional<Shares<C>> at(double time) {
    OptionalDouble surviving = survival.survivalAt(time);
    return surviving.isEmpty()
        ? Optional.empty()
        : Optional.of(new Shares<>(endedBy(time), surviving.getAsDouble()));
  }

  private NavigableMap<C, Double> endedBy(double time) {
    NavigableMap<C, Double> shares = new TreeMap<>();
    endedBy.keySet().forEach(cause -> shares.put(cause, 0.0));
    ProductLimit product = new ProductLimit();
    for (RiskSet set : riskSets) {
      if (set.time() > time) {
        break;
      }
      double before = product.share();
      endedBy.forEach(
          (cause, counts) ->
              shares.merge(
                  cause, before * counts.at(set.time()) / set.atRisk(), CumulativeIncidence::add));
      product.pass(set);
    }
    return shares;
  }

  /** Rounding must not bring a share above 1. */
  private static double add(double share, double step) {
    return Math.min(1, share + step);
  }
}
