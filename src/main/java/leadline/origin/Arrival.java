package leadline.origin;

import java.io.Serializable;
import java.util.Comparator;

/**
 * When a row reached the lake: the batch's place in the order of arrival, then file digest and
 * line. Independent of the order in which files were named or read.
 */
public record Arrival(long batch, Origin origin) implements Comparable<Arrival>, Serializable {

  private static final Comparator<Arrival> ORDER =
      Comparator.comparingLong(Arrival::batch)
          .thenComparing(arrival -> arrival.origin().digest())
          .thenComparingLong(arrival -> arrival.origin().line());

  @Override
  public int compareTo(Arrival other) {
    return ORDER.compare(this, other);
  }
}
