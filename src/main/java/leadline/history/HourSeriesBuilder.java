package leadline.history;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import leadline.fleet.Reading;
import leadline.fleet.ReadingKind;
import leadline.history.HourMark.Doubt;
import leadline.history.HourMark.Slack;
import leadline.history.HourMark.Step;
import leadline.history.JudgedReading.LeftOut;
import leadline.history.JudgedReading.Mended;
import leadline.history.JudgedReading.Trusted;
import leadline.history.LogProblem.TotalAfterGap;
import leadline.history.ReadingProblem.CounterChangeUnsaid;
import leadline.history.ReadingProblem.CounterGap;
import leadline.problem.Checked;
import leadline.quantity.RunningHours;

/** Joins a machine's readings, as they were judged, to one series. */
final class HourSeriesBuilder {

  private static final Comparator<Reading> IN_TIME =
      Comparator.comparing(Reading::at).thenComparing(Reading::kind).thenComparing(Reading::hours);

  private final Counter counter;
  private final TotalRhythm rhythm;
  private final RepeatedTotals repeated;
  private final List<HourMark> marks = new ArrayList<>();
  private final List<ReadingNote> notes = new ArrayList<>();
  private final List<ReadingProblem> problems = new ArrayList<>();
  private final LeftOutReadings leftOut = new LeftOutReadings();

  /** Up to when hours were run that only a total left out tells of. */
  private Optional<Instant> untold = Optional.empty();

  private HourSeriesBuilder(Counter counter, TotalRhythm rhythm, RepeatedTotals repeated) {
    this.counter = counter;
    this.rhythm = rhythm;
    this.repeated = repeated;
  }

  /**
   * @param readings of one machine, in any order
   * @param counterDigits whole digits that its counter shows
   */
  static Checked<HourSeries, ReadingProblem> build(
      List<Reading> readings, Optional<Integer> counterDigits) {
    List<Reading> inTime = readings.stream().sorted(IN_TIME).toList();
    HourSeriesBuilder builder =
        new HourSeriesBuilder(
            Counter.ofDigits(counterDigits), TotalRhythm.of(inTime), RepeatedTotals.of(inTime));
    builder.judged(inTime).forEach(builder::add);
    builder.problems.addAll(builder.leftOut.problems());
    builder.problems.addAll(builder.repeated.questions());
    MinutesWritten.question(inTime).ifPresent(builder.problems::add);
    return new Checked<>(new HourSeries(builder.marks, builder.notes), builder.problems);
  }

  /** All readings in time; those of each counter are judged among themselves. */
  private List<JudgedReading> judged(List<Reading> inTime) {
    List<JudgedReading> judged = new ArrayList<>();
    List<Reading> ofCounter = new ArrayList<>();
    for (Reading reading : inTime) {
      if (reading.kind() == ReadingKind.REPLACED) {
        judged.addAll(CounterLog.judge(ofCounter, counter));
        ofCounter.clear();
      }
      if (reading.kind() == ReadingKind.TOTAL) {
        judged.add(new Trusted(reading));
      } else {
        ofCounter.add(reading);
      }
    }
    judged.addAll(CounterLog.judge(ofCounter, counter));
    judged.sort(Comparator.comparing(JudgedReading::reading, IN_TIME));
    return judged;
  }

  private void add(JudgedReading judged) {
    Reading reading = judged.reading();
    if (judged instanceof LeftOut out) {
      leaveOut(reading, out.rule());
      return;
    }
    leftOut.finish();
    Optional<Instant> untoldBefore = untold;
    untold = Optional.empty();
    if (marks.isEmpty()) {
      marks.add(
          new HourMark(
              reading.at(),
              reading.hours(),
              Slack.NONE,
              Doubt.NONE,
              RunningHours.ZERO,
              Step.COUNTED));
    } else if (judged instanceof Mended mended) {
      addMended(mended, last());
    } else {
      switch (reading.kind()) {
        case COUNTER -> addCounter(reading, last());
        case TOTAL -> addTotal(reading, last(), untoldBefore);
        case REPLACED -> addReplaced(reading, last());
      }
    }
  }

  private HourMark last() {
    return marks.get(marks.size() - 1);
  }

  private void addCounter(Reading reading, HourMark last) {
    RunningHours plain = reading.hours().plus(last.offset()).minus(last.hours());
    if (Counter.isPossible(plain, last.at(), reading.at())) {
      mark(reading, last, plain, last.offset(), Step.COUNTED);
      return;
    }
    Optional<RunningHours> rolledOver =
        counter
            .full()
            .filter(full -> plain.isNegative())
            .map(plain::plus)
            .filter(hours -> Counter.isPossible(hours, last.at(), reading.at()));
    if (rolledOver.isPresent()) {
      notes.add(new ReadingNote(reading, HourRule.ROLL_OVER));
      RunningHours offset = last.hours().plus(rolledOver.get()).minus(reading.hours());
      mark(reading, last, rolledOver.get(), offset, Step.ROLLED_OVER);
    } else if (plain.isNegative() && isOfNewCounter(reading, last)) {
      addNewCounter(reading, last);
    } else {
      leaveOut(reading, HourRule.IMPOSSIBLE);
    }
  }

  /** Of the readings trusted together, one that cannot follow begins a new counter. */
  private boolean isOfNewCounter(Reading reading, HourMark last) {
    return last.step() != Step.UNRECORDED
        && Counter.isPossible(reading.hours(), last.at(), reading.at());
  }

  /** What the new counter shows was run on it; the rest of the gap nobody read. */
  private void addNewCounter(Reading reading, HourMark last) {
    notes.add(new ReadingNote(reading, HourRule.NEW_COUNTER));
    problems.add(
        new CounterChangeUnsaid(
            reading.machine(),
            last.at(),
            last.hours().minus(last.offset()),
            reading.at(),
            reading.hours(),
            reading.origin()));
    RunningHours gap = RunningHours.elapsedBetween(last.at(), reading.at());
    Doubt doubt =
        last.doubt()
            .repaired(reading.hours())
            .unseen(gap.minus(reading.hours()).max(RunningHours.ZERO));
    marks.add(last.then(reading.at(), reading.hours(), doubt, last.hours(), Step.UNRECORDED));
  }

  private void addMended(Mended mended, HourMark last) {
    Reading reading = mended.reading();
    RunningHours hours = mended.value().plus(last.offset());
    RunningHours increment = hours.minus(last.hours());
    if (!Counter.isPossible(increment, last.at(), reading.at())) {
      leaveOut(reading, HourRule.IMPOSSIBLE);
      return;
    }
    notes.add(new ReadingNote(reading, mended.rule()));
    marks.add(
        new HourMark(
            reading.at(),
            hours,
            new Slack(mended.value().minus(mended.lower()), mended.upper().minus(mended.value())),
            last.doubt().repaired(increment),
            last.offset(),
            Step.MENDED));
  }

  /** A total tells of the hours since the one before, be that left out or not. */
  private void addTotal(Reading total, HourMark last, Optional<Instant> untoldBefore) {
    Instant since = untoldBefore.orElse(last.at());
    if (!Counter.isPossible(total.hours(), since, total.at())) {
      leaveOut(total, isCountersOwn(total, last) ? HourRule.MIXED : HourRule.IMPOSSIBLE);
      return;
    }
    RunningHours uncovered = rhythm.uncovered(total, since);
    if (uncovered.isAbove(RunningHours.ZERO)) {
      problems.add(TotalAfterGap.of(total, since, rhythm));
    }
    Step step = untoldBefore.isPresent() ? Step.UNRECORDED : Step.COUNTED;
    if (repeated.has(total)) {
      addDoubtful(total, last, RepeatedTotals.doubt(total, since, last.doubt()), since, step);
    } else if (uncovered.isAbove(RunningHours.ZERO)) {
      Doubt doubt = last.doubt().interpolated(total.hours()).unseen(uncovered);
      addDoubtful(total, last, doubt, since, step);
    } else if (untoldBefore.isPresent()) {
      addDoubtful(total, last, last.doubt(), since, step);
    } else {
      mark(total, last, total.hours(), last.offset(), step);
    }
  }

  /** Before the total begins, hours may have been run of which no reading tells. */
  private void addDoubtful(Reading total, HourMark last, Doubt doubt, Instant since, Step step) {
    Doubt sum = doubt.unseen(RunningHours.elapsedBetween(last.at(), since));
    marks.add(last.then(total.at(), total.hours(), sum, last.offset(), step));
  }

  /** Whether hours run are what the counter must show by then, where it has run for long. */
  private static boolean isCountersOwn(Reading total, HourMark last) {
    RunningHours shown = last.hours().minus(last.offset());
    return shown.isAbove(Counter.most(last.at(), total.at()))
        && Counter.isPossible(total.hours().minus(shown), last.at(), total.at());
  }

  private void addReplaced(Reading reading, HourMark last) {
    notes.add(new ReadingNote(reading, HourRule.REPLACED));
    if (reading.at().isAfter(last.at())) {
      problems.add(new CounterGap(reading.machine(), last.at(), reading.at(), reading.origin()));
    }
    Doubt doubt = last.doubt().unseen(RunningHours.elapsedBetween(last.at(), reading.at()));
    RunningHours offset = last.hours().minus(reading.hours());
    marks.add(last.then(reading.at(), RunningHours.ZERO, doubt, offset, Step.UNRECORDED));
  }

  /** Hours since a mended reading are as doubtful as those up to it. */
  private void mark(
      Reading reading, HourMark last, RunningHours increment, RunningHours offset, Step step) {
    boolean isDoubtful = step == Step.ROLLED_OVER || last.step() == Step.MENDED;
    Doubt doubt = isDoubtful ? last.doubt().repaired(increment) : last.doubt();
    boolean isLong =
        last.at().plus(HourSpan.LONGEST_PLAIN).isBefore(reading.at())
            && reading.kind() != ReadingKind.TOTAL;
    Doubt sum = isLong ? doubt.interpolated(increment) : doubt;
    marks.add(last.then(reading.at(), increment, sum, offset, step));
  }

  private void leaveOut(Reading reading, HourRule rule) {
    notes.add(new ReadingNote(reading, rule));
    Optional<HourMark> before = marks.isEmpty() ? Optional.empty() : Optional.of(last());
    leftOut.add(reading, rule, before);
    if (reading.kind() == ReadingKind.TOTAL) {
      untold = Optional.of(reading.at());
    }
  }
}
