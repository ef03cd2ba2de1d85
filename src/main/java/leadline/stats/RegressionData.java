package leadline.stats;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;

/**
 * Lives, each with numbers that may bear on how soon it ends; the order in which they were added
 * makes no difference.
 */
public final class RegressionData {

  /** Lives with the same covariates, of each of which something is known. */
  record Alike(List<Double> covariates, LifeData lives) {}

  private final List<String> covariates;
  private final List<Alike> groups;
  private final LifeData pooled;

  private RegressionData(List<String> covariates, List<Alike> groups, LifeData pooled) {
    this.covariates = covariates;
    this.groups = groups;
    this.pooled = pooled;
  }

  /** Gathers lives, each as often as its weight says. */
  public static final class Builder {

    private final List<String> covariates;
    private final Map<List<Double>, LifeData.Builder> groups = new HashMap<>();
    private final LifeData.Builder pooled = new LifeData.Builder();

    /**
     * For lives of which these numbers are known.
     *
     * @throws IllegalArgumentException if two have the same name
     */
    public Builder(List<String> covariates) {
      this.covariates = List.copyOf(covariates);
      if (new HashSet<>(covariates).size() < covariates.size()) {
        throw new IllegalArgumentException("two covariates of one name: " + covariates);
      }
    }

    /**
     * Adds lives alike to those gathered.
     *
     * @param values of the covariates in their order, finite
     * @param weight how many lives are alike, finite and more than 0
     * @throws IllegalArgumentException if there are more or fewer values than covariates, or a
     *     value or the weight is out of its range
     */
    public Builder add(Life life, List<Double> values, double weight) {
      if (values.size() != covariates.size() || !values.stream().allMatch(Double::isFinite)) {
        throw new IllegalArgumentException(covariates + " must have finite values: " + values);
      }
      pooled.add(life, weight);
      if (life.lower() > 0 || life.upper() < Double.POSITIVE_INFINITY) {
        List<Double> withoutNegativeZero = values.stream().map(value -> value + 0.0).toList();
        groups
            .computeIfAbsent(withoutNegativeZero, none -> new LifeData.Builder())
            .add(life, weight);
      }
      return this;
    }

    /** The lives gathered so far. */
    public RegressionData build() {
      List<Alike> alike = new ArrayList<>(groups.size());
      groups.forEach((values, lives) -> alike.add(new Alike(values, lives.build())));
      alike.sort((one, other) -> compare(one.covariates(), other.covariates()));
      return new RegressionData(covariates, List.copyOf(alike), pooled.build());
    }

    private static int compare(List<Double> one, List<Double> other) {
      for (int index = 0; index < one.size(); index++) {
        int order = Double.compare(one.get(index), other.get(index));
        if (order != 0) {
          return order;
        }
      }
      return 0;
    }
  }

  /** Names, in the order given. */
  public List<String> covariates() {
    return covariates;
  }

  /** In the order of their covariates' values. */
  List<Alike> groups() {
    return groups;
  }

  /** All lives, their covariates left aside. */
  LifeData pooled() {
    return pooled;
  }

  /** The values of one covariate, one of each group. */
  double[] column(int covariate) {
    return groups.stream().mapToDouble(group -> group.covariates().get(covariate)).toArray();
  }
}
