package leadline.history;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import leadline.fleet.Reading;
import leadline.history.HourMark.Step;
import leadline.history.ReadingProblem.CounterGap;
import leadline.history.ReadingProblem.ImpossibleReading;
import leadline.problem.Checked;
import leadline.quantity.RunningHours;

/** Joins a machine's readings, each checked against the last one trusted. */
final class HourSeriesBuilder {

  private static final Comparator<Reading> IN_TIME =
      Comparator.comparing(Reading::at).thenComparing(Reading::kind).thenComparing(Reading::hours);

  /** What a full counter shows, and one more; none where its digits are not known. */
  private final Optional<RunningHours> fullCounter;

  private final List<HourMark> marks = new ArrayList<>();
  private final List<ReadingProblem> problems = new ArrayList<>();

  private HourSeriesBuilder(Optional<Integer> counterDigits) {
    this.fullCounter =
        counterDigits.map(digits -> RunningHours.ofHours(Math.round(Math.pow(10, digits))));
  }

  /**
   * @param readings of one machine, in any order
   * @param counterDigits whole digits that its counter shows
   */
  static Checked<HourSeries, ReadingProblem> build(
      List<Reading> readings, Optional<Integer> counterDigits) {
    HourSeriesBuilder builder = new HourSeriesBuilder(counterDigits);
    readings.stream().sorted(IN_TIME).forEach(builder::add);
    return new Checked<>(new HourSeries(builder.marks), builder.problems);
  }

  private void add(Reading reading) {
    if (marks.isEmpty()) {
      marks.add(
          new HourMark(
              reading.at(), reading.hours(), RunningHours.ZERO, RunningHours.ZERO, Step.COUNTED));
      return;
    }
    HourMark last = marks.get(marks.size() - 1);
    switch (reading.kind()) {
      case COUNTER -> addCounter(reading, last);
      case TOTAL -> addTotal(reading, last);
      case REPLACED -> addReplaced(reading, last);
    }
  }

  private void addCounter(Reading reading, HourMark last) {
    RunningHours increment = reading.hours().plus(last.offset()).minus(last.hours());
    Optional<RunningHours> rolledOver =
        fullCounter.filter(full -> increment.isNegative()).map(increment::plus);
    if (isPossible(increment, reading, last)) {
      marks.add(counted(reading, last, increment));
    } else if (rolledOver.filter(hours -> isPossible(hours, reading, last)).isPresent()) {
      marks.add(rolledOver(reading, last, rolledOver.get()));
    } else {
      refuse(reading, last, increment);
    }
  }

  private void addTotal(Reading reading, HourMark last) {
    if (isPossible(reading.hours(), reading, last)) {
      marks.add(counted(reading, last, reading.hours()));
    } else {
      refuse(reading, last, reading.hours());
    }
  }

  private void addReplaced(Reading reading, HourMark last) {
    if (reading.at().isAfter(last.at())) {
      problems.add(new CounterGap(reading.machine(), last.at(), reading.at(), reading.origin()));
    }
    marks.add(
        new HourMark(
            reading.at(),
            last.hours(),
            last.repaired(),
            last.hours().minus(reading.hours()),
            Step.UNRECORDED));
  }

  private void refuse(Reading reading, HourMark last, RunningHours increment) {
    problems.add(
        new ImpossibleReading(
            reading.machine(),
            reading.at(),
            reading.kind(),
            reading.hours(),
            last.at(),
            increment,
            reading.origin()));
  }

  private static HourMark counted(Reading reading, HourMark last, RunningHours increment) {
    return new HourMark(
        reading.at(), last.hours().plus(increment), last.repaired(), last.offset(), Step.COUNTED);
  }

  private static HourMark rolledOver(Reading reading, HourMark last, RunningHours increment) {
    RunningHours hours = last.hours().plus(increment);
    return new HourMark(
        reading.at(),
        hours,
        last.repaired().plus(increment),
        hours.minus(reading.hours()),
        Step.ROLLED_OVER);
  }

  /** A day of ship's time may have 25 hours. */
  private static boolean isPossible(RunningHours increment, Reading reading, HourMark last) {
    RunningHours elapsed = RunningHours.elapsedBetween(last.at(), reading.at());
    return !increment.isNegative() && !increment.times(24).isAbove(elapsed.times(25));
  }
}
