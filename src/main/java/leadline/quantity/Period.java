package leadline.quantity;

import java.io.Serializable;
import java.time.Instant;
import java.util.Optional;

/**
 * A stretch of time, open at its start and closed at its end: {@code (start, end]}. An event at the
 * start belongs to the period before.
 */
public record Period(Instant start, Instant end) implements Serializable {

  public Period {
    if (end.isBefore(start)) {
      throw new IllegalArgumentException(
          "a period ends at or after its start: " + start + ", " + end);
    }
  }

  /** The stretch that both periods cover; none where they do not meet or only touch. */
  public Optional<Period> overlap(Period other) {
    Instant laterStart = start.isAfter(other.start) ? start : other.start;
    Instant earlierEnd = end.isBefore(other.end) ? end : other.end;
    return laterStart.isBefore(earlierEnd)
        ? Optional.of(new Period(laterStart, earlierEnd))
        : Optional.empty();
  }

  public boolean contains(Instant moment) {
    return moment.isAfter(start) && !moment.isAfter(end);
  }
}
