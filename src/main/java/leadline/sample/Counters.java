package leadline.sample;

import java.util.Optional;

/** Draws the counters of a vessel's machines, and plants what goes wrong with them. */
final class Counters {

  private static final int DIGITS = 6;
  private static final int FEWER_DIGITS = 5;
  private static final long FEWER_FULL = 1_000_000;
  private static final int MOST_HOURS_BEFORE = 40_000;

  /** Of the time of the records: a counter is not replaced, nor full, at its very ends. */
  private static final double EDGE = .2;

  private final FleetPlan plan;
  private final ErrorList errors;

  Counters(FleetPlan plan, ErrorList errors) {
    this.plan = plan;
    this.errors = errors;
  }

  Counter counter(SailingMachine machine, Draw draw) {
    long base = 10L * draw.below(MOST_HOURS_BEFORE);
    double at = draw.between(EDGE, 1 - EDGE);
    boolean rollsOver = draw.chance(plan.errors().of(RecordError.ROLL_OVER));
    boolean isReplaced = draw.chance(plan.errors().of(RecordError.COUNTER_REPLACED));
    Counter.Handover handover = draw.chance(.5) ? Counter.Handover.READ : Counter.Handover.UNREAD;
    boolean isUndeclared = isChangedUnseen(machine, draw.branch("undeclared"));
    if (machine.vessel().inServiceOn().isPresent()) {
      return new Counter(0, DIGITS, Optional.empty());
    } else if (machine.design().running() != Running.MAIN_ENGINE
        || !(rollsOver || isReplaced || isUndeclared)) {
      return new Counter(base, DIGITS, Optional.empty());
    }
    MachineDays days = machine.days();
    int day = days.day(plan.firstDay()) + (int) (at * plan.days());
    String record = machine.design().name() + " " + days.date(day);
    if (rollsOver) {
      errors.add(RecordError.ROLL_OVER, "hours", record, "");
      return new Counter(FEWER_FULL - days.endOf(day), FEWER_DIGITS, Optional.empty());
    }
    if (isUndeclared) {
      handover = Counter.Handover.UNDECLARED;
    }
    errors.add(
        isUndeclared ? RecordError.COUNTER_UNDECLARED : RecordError.COUNTER_REPLACED,
        "hours",
        record,
        "");
    return new Counter(
        base, DIGITS, Optional.of(new Counter.Replacement(day, days.endOf(day), handover)));
  }

  /** A log of monthly totals shows no change of the counter. */
  private boolean isChangedUnseen(SailingMachine machine, Draw draw) {
    return draw.chance(plan.errors().of(RecordError.COUNTER_UNDECLARED))
        && machine.vessel().readings() != ReadingHabit.MONTHLY;
  }
}
