package leadline.stats;

/**
 * What is known of one life: when it ended, or between which ages, or which age it outlived. Ages
 * are in the caller's unit, counted from new.
 */
public sealed interface Life {

  /**
   * The age beyond which it must have lived to be known of at all (delayed entry, left truncation);
   * 0 when it was known from new.
   */
  double entry();

  /** The last age at which it was known to be alive, 0 or more. */
  double lower();

  /** The first age at which it was known to have ended; positive infinity if none. */
  double upper();

  /**
   * Its end was seen.
   *
   * @throws IllegalArgumentException if the age is not finite and positive
   */
  static Life failedAt(double age) {
    return new FailedAt(0, age);
  }

  /**
   * It ended after the lower age and not after the upper (interval-censored; left-censored where
   * the lower is 0).
   *
   * @throws IllegalArgumentException if ages are not 0 &lt;= lower &lt; upper &lt; infinity
   */
  static Life failedBetween(double lower, double upper) {
    return new FailedBetween(0, lower, upper);
  }

  /**
   * It outlived an age, and no more is known (right-censored).
   *
   * @throws IllegalArgumentException if the age is not finite, or negative
   */
  static Life outlived(double age) {
    return new Outlived(0, age);
  }

  /**
   * The same life, known only because it lived beyond this age. An end between two ages then lies
   * beyond the entry too.
   *
   * @throws IllegalArgumentException if the entry is negative, or not before the last age of which
   *     something is known
   */
  Life enteredAt(double entry);

  /** Its end was seen at an age. */
  record FailedAt(double entry, double age) implements Life {
    /**
     * @throws IllegalArgumentException if ages are not 0 &lt;= entry &lt; age &lt; infinity
     */
    public FailedAt {
      requireInOrder(entry, age);
    }

    @Override
    public double lower() {
      return age;
    }

    @Override
    public double upper() {
      return age;
    }

    @Override
    public Life enteredAt(double later) {
      return new FailedAt(later, age);
    }
  }

  /** It ended after one age and not after another. */
  record FailedBetween(double entry, double lower, double upper) implements Life {
    /**
     * @throws IllegalArgumentException if ages are not 0 &lt;= entry &lt;= lower &lt; upper &lt;
     *     infinity
     */
    public FailedBetween {
      requireInOrder(lower, upper);
      if (!(entry >= 0 && entry <= lower)) {
        throw new IllegalArgumentException("entry must be 0 to " + lower + ": " + entry);
      }
    }

    @Override
    public Life enteredAt(double later) {
      return new FailedBetween(later, Math.max(lower, later), upper);
    }
  }

  /** It outlived an age. */
  record Outlived(double entry, double lower) implements Life {
    /**
     * @throws IllegalArgumentException if ages are not 0 &lt;= entry &lt; lower &lt; infinity, or
     *     both 0
     */
    public Outlived {
      if (entry != 0 || lower != 0) {
        requireInOrder(entry, lower);
      }
    }

    @Override
    public double upper() {
      return Double.POSITIVE_INFINITY;
    }

    @Override
    public Life enteredAt(double later) {
      return new Outlived(later, lower);
    }
  }

  private static void requireInOrder(double first, double last) {
    if (!(first >= 0 && first < last && Double.isFinite(last))) {
      throw new IllegalArgumentException(
          "ages must be 0 or more, finite and in order: " + first + ", " + last);
    }
  }
}
