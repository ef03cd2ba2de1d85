package leadline.stats;

import java.util.List;

/**
 * The recurrent events of a unit while it was observed.
 *
 * @param start when observation began, on the unit's own clock in the caller's unit, finite, 0 or
 *     more
 * @param end when it ended, finite, more than {@code start}
 * @param events when they happened, each after {@code start} and not after {@code end}; kept in
 *     order
 */
public record EventHistory(double start, double end, List<Double> events) {

  /**
   * @throws IllegalArgumentException if not 0 &lt;= start &lt; end &lt; infinity, or an event is
   *     outside
   */
  public EventHistory {
    if (!(start >= 0 && start < end && Double.isFinite(end))) {
      throw new IllegalArgumentException("no time observed: " + start + " to " + end);
    }
    for (double event : events) {
      if (!(event > start && event <= end)) {
        throw new IllegalArgumentException("event outside the time observed: " + event);
      }
    }
    events = events.stream().sorted().toList();
  }

  /** Whether observation ended with an event. */
  boolean endsWithEvent() {
    return !events.isEmpty() && events.get(events.size() - 1) == end;
  }

  boolean isObservedAt(double time) {
    return start < time && time <= end;
  }
}
