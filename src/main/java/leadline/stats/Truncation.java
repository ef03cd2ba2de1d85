package leadline.stats;

import java.util.List;

/** What ended the observation of recurrent events. */
public enum Truncation {
  /** A time set beforehand: an event at the end is chance. */
  TIME,
  /** The last event, for units whose end it is: such an event tells the end only. */
  FAILURE;

  /** The events whose times tell of a trend. */
  List<Double> telling(EventHistory history) {
    return endedByEvent(history)
        ? history.events().subList(0, history.events().size() - 1)
        : history.events();
  }

  boolean endedByEvent(EventHistory history) {
    return switch (this) {
      case TIME -> false;
      case FAILURE -> history.endsWithEvent();
    };
  }
}
