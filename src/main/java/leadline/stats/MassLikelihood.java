package leadline.stats;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * The log-likelihood of masses on innermost intervals, the sum of w log P, where each observed
 * duration has the probability P of a run of neighbouring masses. It is concave. Runs make every
 * quantity here a difference of running sums, in time proportional to durations and masses.
 */
final class MassLikelihood {

  private record Run(int first, int last, double weight) {}

  private final int masses;
  private final List<Run> runs;
  private final double total;

  MassLikelihood(InnermostIntervals intervals, List<ObservedInterval> durations) {
    masses = intervals.count();
    runs =
        merged(
            durations.stream()
                .map(
                    duration ->
                        new Run(
                            intervals.firstWithin(duration),
                            intervals.lastWithin(duration),
                            duration.weight()))
                .sorted(
                    Comparator.comparingInt(Run::first)
                        .thenComparingInt(Run::last)
                        .thenComparingDouble(Run::weight))
                .toList());
    total = runs.stream().mapToDouble(Run::weight).sum();
  }

  private static List<Run> merged(List<Run> sorted) {
    List<Run> merged = new ArrayList<>();
    for (Run run : sorted) {
      int end = merged.size() - 1;
      if (end >= 0
          && merged.get(end).first() == run.first()
          && merged.get(end).last() == run.last()) {
        merged.set(end, new Run(run.first(), run.last(), merged.get(end).weight() + run.weight()));
      } else {
        merged.add(run);
      }
    }
    return merged;
  }

  int masses() {
    return masses;
  }

  /** The weight of all durations: what each positive mass's slope is at the maximum. */
  double total() {
    return total;
  }

  /** The sum of a value over each run. */
  double[] sums(double[] values) {
    WideSums before = new WideSums(masses + 1);
    for (int mass = 0; mass < masses; mass++) {
      before.add(mass + 1, values[mass]);
    }
    before.running();
    double[] sums = new double[runs.size()];
    for (int index = 0; index < sums.length; index++) {
      sums[index] = before.difference(runs.get(index).last() + 1, runs.get(index).first());
    }
    return sums;
  }

  /** Negative infinity where a duration has no probability. */
  double logLikelihood(double[] probabilities) {
    double sum = 0;
    for (int index = 0; index < probabilities.length; index++) {
      if (!(probabilities[index] > 0)) {
        return Double.NEGATIVE_INFINITY;
      }
      sum += runs.get(index).weight() * Math.log(probabilities[index]);
    }
    return sum;
  }

  /** The slope of the log-likelihood along each mass, the sum of w / P over its durations. */
  double[] slopes(double[] probabilities) {
    double[] shares = new double[probabilities.length];
    for (int index = 0; index < shares.length; index++) {
      shares[index] = 1 / probabilities[index];
    }
    return spread(shares);
  }

  /**
   * The most by which the log-likelihood of masses of sum 1 can fall short of the maximum: by
   * concavity, the steepest slope less the mean slope, which is the total weight. Source: Lindsay
   * 1983, Annals of Statistics 11:86, theorem 3.1.
   */
  double shortfall(double[] values) {
    return Math.max(0, Arrays.stream(slopes(sums(values))).max().orElseThrow() - total);
  }

  /** The curvature of the log-likelihood, a matrix, times a direction. */
  double[] curvatureTimes(double[] probabilities, double[] direction) {
    double[] shares = sums(direction);
    for (int index = 0; index < shares.length; index++) {
      shares[index] /= probabilities[index] * probabilities[index];
    }
    return spread(shares);
  }

  /** The diagonal of the curvature, the sum of w / P^2 over a mass's durations. */
  double[] curvatures(double[] probabilities) {
    double[] shares = new double[probabilities.length];
    for (int index = 0; index < shares.length; index++) {
      shares[index] = 1 / (probabilities[index] * probabilities[index]);
    }
    return spread(shares);
  }

  /** The diagonal of the curvature along the running sums of the masses, all but the whole sum. */
  double[] curvaturesAlongSums(double[] probabilities) {
    double[] curvatures = new double[masses];
    for (int index = 0; index < probabilities.length; index++) {
      Run run = runs.get(index);
      double curvature = run.weight() / (probabilities[index] * probabilities[index]);
      curvatures[run.last()] += curvature;
      if (run.first() > 0) {
        curvatures[run.first() - 1] += curvature;
      }
    }
    return Arrays.copyOf(curvatures, masses - 1);
  }

  /** The weighted sum, over the runs that hold a mass, of a value of the run. */
  private double[] spread(double[] values) {
    WideSums held = new WideSums(masses + 1);
    for (int index = 0; index < values.length; index++) {
      Run run = runs.get(index);
      held.add(run.first(), run.weight() * values[index]);
      held.add(run.last() + 1, -run.weight() * values[index]);
    }
    held.running();
    double[] sums = new double[masses];
    for (int mass = 0; mass < masses; mass++) {
      sums[mass] = held.at(mass);
    }
    return sums;
  }
}
