package leadline.history;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import leadline.quantity.Period;
import leadline.quantity.RunningHours;

/**
 * A machine's hours as one never-falling series, through roll-overs and changes of the counter.
 * Between two trusted readings hours are interpolated; before the first and after the last they are
 * not known.
 */
public final class HourSeries {

  private final List<HourMark> marks;
  private final List<ReadingNote> notes;

  /**
   * @param marks by time, with hours that never fall
   * @param notes on the readings that are not used as they are written, by time
   */
  HourSeries(List<HourMark> marks, List<ReadingNote> notes) {
    this.marks = List.copyOf(marks);
    this.notes = List.copyOf(notes);
  }

  /** The readings that are used otherwise than they are written, or not at all, by time. */
  public List<ReadingNote> notes() {
    return notes;
  }

  /** From the first to the last trusted reading; none where there is no reading. */
  public Optional<Period> span() {
    return marks.isEmpty()
        ? Optional.empty()
        : Optional.of(new Period(marks.get(0).at(), marks.get(marks.size() - 1).at()));
  }

  /** The hours at a moment; none before the first and after the last trusted reading. */
  public Optional<Bounded> at(Instant moment) {
    return spanAt(moment).map(span -> span.at(moment));
  }

  /** Hours run in a period, as far as it lies between the first and the last trusted reading. */
  public Exposure exposure(Period period) {
    return span().flatMap(period::overlap).map(this::within).orElse(Exposure.NONE);
  }

  /**
   * What a figure written down at a moment can mean on this series: a reading of a counter in force
   * about then, the one before first, or the running total.
   */
  List<RunningHours> meaningsOf(RunningHours written, Instant moment) {
    Set<RunningHours> meanings = new LinkedHashSet<>();
    int after = indexAfter(moment);
    for (int i = Math.max(0, indexBefore(moment)); i <= Math.min(after, marks.size() - 1); i++) {
      meanings.add(written.plus(marks.get(i).offset()));
    }
    meanings.add(written);
    return new ArrayList<>(meanings);
  }

  /**
   * Hours that may have been run besides, of which no reading tells, from when the series stood at
   * so many up to a moment; none outside the series.
   */
  RunningHours unseen(RunningHours from, Instant to) {
    RunningHours before =
        marks.stream()
            .filter(mark -> !mark.hours().isAbove(from))
            .reduce((earlier, later) -> later)
            .map(mark -> mark.doubt().unseen())
            .orElse(RunningHours.ZERO);
    return spanAt(to).map(span -> span.unseenAt(to).minus(before)).orElse(RunningHours.ZERO);
  }

  private Exposure within(Period known) {
    HourSpan first = spanAt(known.start()).orElseThrow();
    HourSpan last = spanAt(known.end()).orElseThrow();
    Bounded from = first.at(known.start());
    Bounded to = last.at(known.end());
    RunningHours hours = to.hours().minus(from.hours());
    RunningHours unsure = last.unsureAt(known.end()).minus(first.unsureAt(known.start()));
    RunningHours unseen = last.unseenAt(known.end()).minus(first.unseenAt(known.start()));
    RunningHours withoutAPause = RunningHours.elapsedBetween(known.start(), known.end());
    return new Exposure(
        hours,
        last.repairedAt(known.end()).minus(first.repairedAt(known.start())),
        last.interpolatedAt(known.end()).minus(first.interpolatedAt(known.start())),
        to.lower().minus(from.upper()).minus(unsure).max(RunningHours.ZERO),
        to.upper().minus(from.lower()).plus(unseen).min(withoutAPause.max(hours)));
  }

  private Optional<HourSpan> spanAt(Instant moment) {
    int after = indexAfter(moment);
    if (after == 0 || marks.isEmpty()) {
      return Optional.empty();
    }
    HourMark from = marks.get(after - 1);
    if (from.at().equals(moment)) {
      return Optional.of(new HourSpan(from, from));
    }
    return after == marks.size()
        ? Optional.empty()
        : Optional.of(new HourSpan(from, marks.get(after)));
  }

  /** The first mark after the moment, or the number of marks. */
  private int indexAfter(Instant moment) {
    int low = 0;
    int high = marks.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (marks.get(middle).at().isAfter(moment)) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low;
  }

  /** The last mark before the moment, or -1. */
  private int indexBefore(Instant moment) {
    int index = indexAfter(moment) - 1;
    while (index >= 0 && marks.get(index).at().equals(moment)) {
      index--;
    }
    return index;
  }

  /**
   * Hours at a moment, with the least and the most that they can have been: a machine turns 0 to 24
   * hours a day. At a trusted reading all three are the same.
   */
  public record Bounded(RunningHours hours, RunningHours lower, RunningHours upper) {

    /** Whether a figure lies within the bounds, give or take the tolerance. */
    boolean admits(RunningHours figure, RunningHours tolerance) {
      return !lower.minus(tolerance).isAbove(figure) && !figure.isAbove(upper.plus(tolerance));
    }
  }
}
