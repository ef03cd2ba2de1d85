package leadline.history;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import leadline.fleet.Reading;
import leadline.quantity.RunningHours;

/**
 * The readings of a counter that can all be true together: the most of them of which each can
 * follow the one before. So one wrong figure cannot put its neighbours in the wrong, wherever it
 * stands, and a counter that was changed without a word shows by what goes on after it.
 *
 * <p>A reading counts {@value #READING}; a roll-over costs {@value #ROLL_OVER}, so that of two
 * explanations the plainer is taken; a counter changed unsaid costs {@value #NEW_COUNTER}, so that
 * three readings on either side are the least that show it.
 */
final class CounterChain {

  private static final int READING = 4;
  private static final int ROLL_OVER = 1;
  private static final int NEW_COUNTER = 10;

  private final List<Reading> readings;
  private final Counter counter;
  private final int[] score;
  private final int[] before;

  private CounterChain(List<Reading> readings, Counter counter) {
    this.readings = readings;
    this.counter = counter;
    this.score = new int[readings.size()];
    this.before = new int[readings.size()];
  }

  /**
   * The trusted ones of the readings, in time.
   *
   * @param readings of one counter, by time, then by figure
   */
  static List<Reading> trusted(List<Reading> readings, Counter counter) {
    return isChain(readings, counter) ? readings : new CounterChain(readings, counter).longest();
  }

  private static boolean isChain(List<Reading> readings, Counter counter) {
    for (int i = 1; i < readings.size(); i++) {
      if (counter.increment(readings.get(i - 1), readings.get(i)).isEmpty()) {
        return false;
      }
    }
    return true;
  }

  private List<Reading> longest() {
    int[] bestUpTo = new int[readings.size()];
    int last = 0;
    for (int i = 0; i < readings.size(); i++) {
      link(i, bestUpTo);
      bestUpTo[i] = i == 0 ? score[i] : Math.max(bestUpTo[i - 1], score[i]);
      last = score[i] > score[last] ? i : last;
    }
    List<Reading> chain = new ArrayList<>();
    for (int i = last; i >= 0; i = before[i]) {
      chain.add(readings.get(i));
    }
    Collections.reverse(chain);
    return chain;
  }

  /** Of those before it that do equally well, the nearest. */
  private void link(int i, int[] bestUpTo) {
    score[i] = READING;
    before[i] = -1;
    for (int j = i - 1; j >= 0 && bestUpTo[j] + READING > score[i]; j--) {
      int through = score[j] + READING - cost(readings.get(j), readings.get(i));
      if (through > score[i]) {
        score[i] = through;
        before[i] = j;
      }
    }
  }

  private int cost(Reading from, Reading to) {
    Optional<RunningHours> increment = counter.increment(from, to);
    if (increment.isPresent()) {
      return to.hours().compareTo(from.hours()) < 0 ? ROLL_OVER : 0;
    }
    return counter.mayBeNew(from, to) ? NEW_COUNTER : Integer.MAX_VALUE / 2;
  }
}
