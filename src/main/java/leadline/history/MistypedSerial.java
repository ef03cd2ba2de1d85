package leadline.history;

import leadline.fleet.Overhaul;

/**
 * A serial that may have been mistyped: with the proposed one in its place a contradiction is gone.
 * It is put to the ship, and nothing is made of it.
 */
record MistypedSerial(Overhaul overhaul, Cell cell, String written, String proposed) {

  /** Which of the overhaul's two serials. */
  enum Cell {
    REMOVED("removed"),
    FITTED("fitted");

    private final String word;

    Cell(String word) {
      this.word = word;
    }
  }

  /** The overhaul with the proposed serial. */
  Overhaul corrected() {
    return switch (cell) {
      case REMOVED -> overhaul.withRemovedSerial(proposed);
      case FITTED -> overhaul.withFittedSerial(proposed);
    };
  }

  String question() {
    return "was it %s that overhaul %s %s, not %s"
        .formatted(proposed, overhaul.id().overhaul(), cell.word, written);
  }

  /**
   * Whether one becomes the other where one character is changed, left out or put in, or two
   * neighbours change places, and another stays: the slips of typing that one stroke makes. Common
   * practice, no source.
   */
  static boolean isOneSlip(String one, String other) {
    int shorter = Math.min(one.length(), other.length());
    int head = 0;
    while (head < shorter && one.charAt(head) == other.charAt(head)) {
      head++;
    }
    int tail = 0;
    while (tail < shorter - head
        && one.charAt(one.length() - 1 - tail) == other.charAt(other.length() - 1 - tail)) {
      tail++;
    }
    String here = one.substring(head, one.length() - tail);
    String there = other.substring(head, other.length() - tail);
    boolean isOneCharacter = here.length() <= 1 && there.length() <= 1 && !one.equals(other);
    boolean isSwap =
        here.length() == 2 && new StringBuilder(here).reverse().toString().equals(there);
    return head + tail > 0 && (isOneCharacter || isSwap);
  }
}
