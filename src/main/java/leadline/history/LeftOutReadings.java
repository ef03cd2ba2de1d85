package leadline.history;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadline.fleet.Reading;
import leadline.fleet.ReadingKind;
import leadline.history.ReadingProblem.CopiedReadings;
import leadline.history.ReadingProblem.ImpossibleReading;
import leadline.history.ReadingProblem.MixedReading;
import leadline.history.ReadingProblem.OtherDial;
import leadline.history.ReadingProblem.ReadingOfAnotherDay;
import leadline.history.ReadingProblem.ReadingsContradict;
import leadline.quantity.RunningHours;

/** Asks about readings that were left out: once for those that follow each other for one reason. */
final class LeftOutReadings {

  private final List<ReadingProblem> problems = new ArrayList<>();
  private final List<Reading> run = new ArrayList<>();
  private HourRule rule = HourRule.IMPOSSIBLE;

  /**
   * @param before the last trusted reading before it
   */
  void add(Reading reading, HourRule why, Optional<HourMark> before) {
    if (why != rule || !inARow(why)) {
      finish();
    }
    rule = why;
    if (inARow(why)) {
      run.add(reading);
    } else {
      problems.add(alone(reading, why, before));
    }
  }

  /** Whether readings in a row, left out for this, are one question. */
  private static boolean inARow(HourRule why) {
    return why == HourRule.STALE || why == HourRule.REVOLUTIONS || why == HourRule.CONTRADICTED;
  }

  List<ReadingProblem> problems() {
    finish();
    return problems;
  }

  /** A trusted reading: what was left out before it is not one question with what comes. */
  void finish() {
    if (run.isEmpty()) {
      return;
    }
    Reading first = run.get(0);
    Reading last = run.get(run.size() - 1);
    problems.add(
        switch (rule) {
          case STALE ->
              new CopiedReadings(
                  first.machine(), first.at(), last.at(), first.hours(), first.origin());
          case REVOLUTIONS ->
              new OtherDial(first.machine(), first.at(), last.at(), run.size(), first.origin());
          default ->
              new ReadingsContradict(
                  first.machine(),
                  first.at(),
                  first.hours(),
                  last.at(),
                  last.hours(),
                  first.origin());
        });
    run.clear();
  }

  private static ReadingProblem alone(Reading reading, HourRule why, Optional<HourMark> before) {
    return switch (why) {
      case MIXED ->
          new MixedReading(
              reading.machine(), reading.at(), reading.kind(), reading.hours(), reading.origin());
      case ANOTHER_DAY ->
          new ReadingOfAnotherDay(
              reading.machine(), reading.at(), reading.hours(), reading.origin());
      default -> impossible(reading, before);
    };
  }

  private static ReadingProblem impossible(Reading reading, Optional<HourMark> before) {
    RunningHours increment =
        before
            .filter(mark -> reading.kind() != ReadingKind.TOTAL)
            .map(mark -> reading.hours().plus(mark.offset()).minus(mark.hours()))
            .orElse(reading.hours());
    Instant since = before.map(HourMark::at).orElse(reading.at());
    return new ImpossibleReading(
        reading.machine(),
        reading.at(),
        reading.kind(),
        reading.hours(),
        since,
        increment,
        reading.origin());
  }
}
