package leadline.sample;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadline.fleet.Cells;
import leadline.fleet.HoursLayout;
import leadline.fleet.ReadingKind;
import leadline.fleet.RecordKind;
import leadline.quantity.Days;
import leadline.quantity.RunningHours;

/**
 * Writes one machine's log of running hours: an opening reading, the readings by the vessel's
 * habit, one when overhaul records begin, and a closing one.
 */
final class HourLog {

  private final FleetPlan plan;
  private final SailingMachine machine;
  private final Counter counter;
  private final ErrorList errors;
  private final Draw draw;
  private final List<SampleRow> rows = new ArrayList<>();

  private final ReadingKind kind;
  private YearMonth month;
  private Lapse lapse = Lapse.NONE;
  private long lastTenths;
  private RunningHours lastWritten = RunningHours.ZERO;

  /** What befell the readings of a month. */
  private enum Lapse {
    NONE,
    MISSING,
    STALE
  }

  private HourLog(
      FleetPlan plan, SailingMachine machine, Counter counter, ErrorList errors, Draw draw) {
    this.plan = plan;
    this.machine = machine;
    this.counter = counter;
    this.errors = errors;
    this.draw = draw;
    this.kind =
        machine.vessel().readings() == ReadingHabit.MONTHLY
            ? ReadingKind.TOTAL
            : ReadingKind.COUNTER;
    this.month = YearMonth.from(opening());
  }

  static List<SampleRow> rows(
      FleetPlan plan, SailingMachine machine, Counter counter, ErrorList errors, Draw draw) {
    HourLog log = new HourLog(plan, machine, counter, errors, draw);
    log.write();
    return HourSlips.in(log.rows, plan.errors(), errors, draw.branch("slips"));
  }

  private void write() {
    MachineDays days = machine.days();
    int opening = days.day(opening());
    lastTenths = days.endOf(opening);
    put(Days.endOf(opening()), counter.shown(lastTenths), ReadingKind.COUNTER);
    for (int day = opening + 1; day < days.count(); day++) {
      turnTo(YearMonth.from(days.date(day)));
      if (day == days.count() - 1) {
        lapse = Lapse.NONE;
        read(days.endOf(day), Days.endOf(days.date(day)));
      } else if (isReadOn(days.date(day))) {
        readByHabit(day);
      }
      readAsRecordsBegin(day);
      replaceCounter(day);
    }
  }

  private LocalDate opening() {
    return machine.vessel().inServiceOn().orElse(plan.firstDay().minusDays(1));
  }

  /** The first month has a figure to copy on only after its first reading. */
  private void turnTo(YearMonth next) {
    if (!next.equals(month)) {
      month = next;
      Lapse drawn = lapse(draw.uniform());
      lapse = rows.size() > 1 && next.isBefore(YearMonth.from(plan.lastDay())) ? drawn : Lapse.NONE;
      if (lapse != Lapse.NONE) {
        errors.add(
            lapse == Lapse.MISSING ? RecordError.MISSING_MONTH : RecordError.STALE_MONTH,
            RecordKind.HOURS.word(),
            machine.design().name() + " " + month,
            "");
      }
    }
  }

  private Lapse lapse(double drawn) {
    double missing = plan.errors().of(RecordError.MISSING_MONTH);
    double stale = plan.errors().of(RecordError.STALE_MONTH);
    if (drawn < missing) {
      return Lapse.MISSING;
    }
    return drawn < missing + stale ? Lapse.STALE : Lapse.NONE;
  }

  private boolean isReadOn(LocalDate date) {
    return switch (machine.vessel().readings()) {
      case DAILY -> true;
      case WEEKLY -> date.getDayOfWeek() == DayOfWeek.SUNDAY;
      case MONTHLY -> date.getDayOfMonth() == date.lengthOfMonth();
    };
  }

  /** Noon is half a day's running after the day's beginning. */
  private void readByHabit(int day) {
    MachineDays days = machine.days();
    Instant end = Days.endOf(days.date(day));
    if (machine.vessel().readings() == ReadingHabit.DAILY) {
      long noon = (days.endOf(day - 1) + days.endOf(day)) / 2;
      read(noon, end.minus(12, ChronoUnit.HOURS));
    } else {
      read(days.endOf(day), end);
    }
  }

  private RunningHours figure(long tenths) {
    return kind == ReadingKind.TOTAL
        ? RunningHours.ofTenths(tenths - lastTenths)
        : counter.shown(tenths);
  }

  private void read(long tenths, Instant at) {
    RunningHours figure = figure(tenths);
    lastTenths = tenths;
    switch (lapse) {
      case NONE -> put(at, figure, kind);
      case MISSING -> {}
      case STALE -> put(at, lastWritten, kind);
    }
  }

  private void put(Instant at, RunningHours figure, ReadingKind readingKind) {
    lastWritten = figure;
    rows.add(
        SampleRow.of(
            Cells.of(RecordKind.HOURS)
                .with(HoursLayout.VESSEL, machine.vessel().vessel())
                .with(HoursLayout.MACHINE, machine.design().name())
                .with(HoursLayout.READ_AT, at)
                .with(HoursLayout.HOURS, figure)
                .with(HoursLayout.KIND, readingKind)
                .build()));
  }

  /** Whoever begins to keep overhaul records notes the hours at which they begin. */
  private void readAsRecordsBegin(int day) {
    LocalDate date = machine.days().date(day);
    if (machine.vessel().recordsFrom().equals(Optional.of(date.plusDays(1)))) {
      readAtEndOf(day);
    }
  }

  /** Unless that is done by habit. */
  private void readAtEndOf(int day) {
    LocalDate date = machine.days().date(day);
    boolean isDone = machine.vessel().readings() != ReadingHabit.DAILY && isReadOn(date);
    if (!isDone || lapse == Lapse.MISSING) {
      long tenths = machine.days().endOf(day);
      put(Days.endOf(date), figure(tenths), kind);
      lastTenths = tenths;
    }
  }

  private void replaceCounter(int day) {
    Optional<Counter.Replacement> now =
        counter.replaced().filter(replacement -> replacement.day() == day);
    if (now.isPresent()) {
      if (now.get().handover() == Counter.Handover.READ) {
        readAtEndOf(day);
      }
      lastTenths = now.get().tenths();
      if (now.get().handover() != Counter.Handover.UNDECLARED) {
        put(Days.endOf(machine.days().date(day)), RunningHours.ZERO, ReadingKind.REPLACED);
      }
    }
  }
}
