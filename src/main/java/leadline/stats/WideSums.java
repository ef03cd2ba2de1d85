package leadline.stats;

/**
 * Sums held in twice the precision of a double, so that small terms outlast the coming and going of
 * terms larger by many orders of magnitude. Source: Knuth 1997, The Art of Computer Programming 2,
 * section 4.2.2, theorem B.
 */
final class WideSums {

  private final double[] high;
  private final double[] low;

  /** So many sums of nothing. */
  WideSums(int count) {
    high = new double[count];
    low = new double[count];
  }

  void add(int index, double term) {
    double before = high[index];
    double sum = before + term;
    double added = sum - before;
    low[index] += (before - (sum - added)) + (term - added);
    high[index] = sum;
  }

  /** Adds to each sum all those before it. */
  WideSums running() {
    for (int index = 1; index < high.length; index++) {
      low[index] += low[index - 1];
      add(index, high[index - 1]);
    }
    return this;
  }

  double at(int index) {
    return high[index] + low[index];
  }

  double difference(int index, int from) {
    return (high[index] - high[from]) + (low[index] - low[from]);
  }
}
