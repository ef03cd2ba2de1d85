package leadline.history;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import leadline.fleet.Reading;
import leadline.history.JudgedReading.LeftOut;
import leadline.history.JudgedReading.Mended;
import leadline.history.JudgedReading.Trusted;
import leadline.quantity.RunningHours;

/** Judges the readings of one counter, each by its trusted neighbours. */
final class CounterLog {

  /** So many wrong figures in a row that climb too fast are of another dial, not of chance. */
  private static final int FEWEST_OF_ANOTHER_DIAL = 3;

  private final List<Reading> readings;
  private final Counter counter;

  /** The trusted ones by their place among all. */
  private final NavigableMap<Integer, Reading> trusted = new TreeMap<>();

  /** Why each of the others is left out, as far as that is known. */
  private final Map<Integer, HourRule> leftOut = new HashMap<>();

  private CounterLog(List<Reading> readings, Counter counter) {
    this.readings = readings;
    this.counter = counter;
  }

  /**
   * @param readings of one counter, by time, then by figure
   */
  static List<JudgedReading> judge(List<Reading> readings, Counter counter) {
    List<Reading> chain = CounterChain.trusted(readings, counter);
    if (chain.size() == readings.size()) {
      return readings.stream().<JudgedReading>map(Trusted::new).toList();
    }
    CounterLog log = new CounterLog(readings, counter);
    log.trust(chain);
    log.leaveOutCopies();
    log.leaveOutContradicted();
    log.leaveOutOtherDials();
    Surroundings around = new Surroundings(List.copyOf(log.trusted.values()), counter);
    return IntStream.range(0, readings.size()).mapToObj(i -> log.judged(i, around)).toList();
  }

  private void trust(List<Reading> chain) {
    int next = 0;
    for (int i = 0; i < readings.size(); i++) {
      if (next < chain.size() && readings.get(i).equals(chain.get(next))) {
        trusted.put(i, readings.get(i));
        next++;
      }
    }
  }

  private List<Integer> untrusted() {
    return IntStream.range(0, readings.size())
        .filter(i -> !trusted.containsKey(i))
        .boxed()
        .toList();
  }

  /** A figure copied on is no reading, even where the machine might have stood still so long. */
  private void leaveOutCopies() {
    for (int i : untrusted()) {
      Optional<Integer> before = Optional.ofNullable(trusted.lowerKey(i));
      if (before.filter(last -> isSameFigure(last, i)).isPresent()) {
        leftOut.put(i, HourRule.STALE);
        int copy = before.get();
        for (int older = copy - 1; older >= 0 && isSameFigure(older, i); older--) {
          leaveOut(copy, HourRule.STALE);
          copy = older;
        }
      }
    }
  }

  private boolean isSameFigure(int one, int other) {
    return readings.get(one).hours().equals(readings.get(other).hours());
  }

  /** Where a reading could stand in the place of its trusted neighbour, neither can be trusted. */
  private void leaveOutContradicted() {
    for (int i : untrusted()) {
      if (!leftOut.containsKey(i)) {
        contradicted(i)
            .ifPresent(
                neighbour -> {
                  leftOut.put(i, HourRule.CONTRADICTED);
                  leaveOut(neighbour, HourRule.CONTRADICTED);
                });
      }
    }
  }

  private Optional<Integer> contradicted(int i) {
    Optional<Integer> before = Optional.ofNullable(trusted.lowerKey(i));
    Optional<Integer> after = Optional.ofNullable(trusted.higherKey(i));
    Optional<Integer> earlier = before.map(trusted::lowerKey);
    Optional<Integer> later = after.map(trusted::higherKey);
    if (before.isEmpty() || after.isEmpty()) {
      return Optional.empty();
    } else if (later.isPresent() && follow(before.get(), i) && follow(i, later.get())) {
      return after;
    }
    return earlier.isPresent() && follow(earlier.get(), i) && follow(i, after.get())
        ? before
        : Optional.empty();
  }

  private boolean follow(int one, int other) {
    return counter.increment(readings.get(one), readings.get(other)).isPresent();
  }

  private void leaveOut(int i, HourRule rule) {
    trusted.remove(i);
    leftOut.put(i, rule);
  }

  private void leaveOutOtherDials() {
    List<Integer> run = new ArrayList<>();
    for (int i = 0; i <= readings.size(); i++) {
      boolean isOut = i < readings.size() && !trusted.containsKey(i) && !leftOut.containsKey(i);
      if (isOut && (run.isEmpty() || isTooFast(i - 1, i))) {
        run.add(i);
      } else {
        if (run.size() >= FEWEST_OF_ANOTHER_DIAL) {
          run.forEach(reading -> leftOut.put(reading, HourRule.REVOLUTIONS));
        }
        run.clear();
        if (isOut) {
          run.add(i);
        }
      }
    }
  }

  private boolean isTooFast(int one, int other) {
    Reading from = readings.get(one);
    Reading to = readings.get(other);
    return to.hours().minus(from.hours()).isAbove(Counter.most(from.at(), to.at()));
  }

  private JudgedReading judged(int i, Surroundings around) {
    Reading reading = readings.get(i);
    if (trusted.containsKey(i)) {
      return new Trusted(reading);
    } else if (leftOut.containsKey(i)) {
      return new LeftOut(reading, leftOut.get(i));
    }
    return mended(i, around).orElseGet(() -> new LeftOut(reading, around.explain(reading)));
  }

  /** Only where the readings next to it are trusted, and one slip alone fits both. */
  private Optional<JudgedReading> mended(int i, Surroundings around) {
    Reading reading = readings.get(i);
    Optional<Reading> before = Optional.ofNullable(trusted.get(i - 1));
    Optional<Reading> after = Optional.ofNullable(trusted.get(i + 1));
    if (before.isEmpty() || after.isEmpty()) {
      return Optional.empty();
    }
    RunningHours lower =
        before
            .get()
            .hours()
            .max(after.get().hours().minus(Counter.most(reading.at(), after.get().at())));
    RunningHours upper =
        after
            .get()
            .hours()
            .min(before.get().hours().plus(Counter.most(before.get().at(), reading.at())));
    RunningHours usual =
        before.get().hours().tenths() % 10 == 0 ? after.get().hours() : before.get().hours();
    List<Map.Entry<RunningHours, HourRule>> fitting =
        DigitSlips.behind(reading.hours(), usual).entrySet().stream()
            .filter(slip -> isBetween(slip.getKey(), lower, upper))
            .toList();
    return fitting.size() == 1 && around.explain(reading) == HourRule.IMPOSSIBLE
        ? Optional.of(
            new Mended(reading, fitting.get(0).getValue(), fitting.get(0).getKey(), lower, upper))
        : Optional.empty();
  }

  private static boolean isBetween(RunningHours value, RunningHours lower, RunningHours upper) {
    return !lower.isAbove(value) && !value.isAbove(upper);
  }
}
