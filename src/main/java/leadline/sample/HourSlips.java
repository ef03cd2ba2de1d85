package leadline.sample;

import java.time.Duration;
import java.time.Instant;
import java.time.YearMonth;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadline.fleet.Cells;
import leadline.fleet.HoursLayout;
import leadline.fleet.ReadingKind;
import leadline.fleet.RecordKind;
import leadline.quantity.Days;
import leadline.quantity.RunningHours;

/** Slips of the pen in single readings of a machine's log, and figures from the wrong dial. */
final class HourSlips {

  private static final Duration DAY = Duration.ofDays(1);
  private static final Duration YEAR = Duration.ofDays(365);

  /** Thousands of revolutions in an hour, at 90 a minute. */
  private static final double THOUSANDS_OF_TURNS = 5.4;

  private final ErrorRates rates;
  private final ErrorList errors;
  private final Draw draw;
  private final Draw months;
  private final boolean minutes;

  private YearMonth month = YearMonth.of(1, 1);
  private boolean turnsRead = false;
  private RunningHours monthBegan = RunningHours.ZERO;

  /** What the machine has run, by its counter. */
  private RunningHours run = RunningHours.ZERO;

  private HourSlips(ErrorRates rates, ErrorList errors, Draw draw) {
    this.rates = rates;
    this.errors = errors;
    this.draw = draw;
    this.months = draw.branch("months");
    this.minutes = draw.branch("minutes").chance(rates.of(RecordError.MINUTES_AS_DECIMALS));
  }

  /**
   * The log with its slips.
   *
   * @param log of one machine, in time; its first and last readings and those of a new counter stay
   */
  static List<SampleRow> in(List<SampleRow> log, ErrorRates rates, ErrorList errors, Draw draw) {
    HourSlips slips = new HourSlips(rates, errors, draw);
    List<SampleRow> written = new ArrayList<>();
    for (int i = 0; i < log.size(); i++) {
      Cells cells = log.get(i).cells();
      boolean isInner = i > 0 && i < log.size() - 1;
      written.add(SampleRow.of(slips.written(cells, isInner)));
    }
    return slips.withMinutes(written);
  }

  private Cells written(Cells reading, boolean isInner) {
    turnTo(reading);
    RunningHours figure = reading.need(HoursLayout.HOURS);
    Optional<RecordError> slip =
        isInner && reading.need(HoursLayout.KIND) != ReadingKind.REPLACED
            ? slip(reading)
            : Optional.empty();
    run = reading.need(HoursLayout.KIND) == ReadingKind.TOTAL ? run.plus(figure) : figure;
    if (slip.isEmpty()) {
      return reading;
    }
    Cells written = slipped(reading, slip.get());
    errors.add(slip.get(), RecordKind.HOURS.word(), record(written), "", truth(reading, written));
    return written;
  }

  private static String truth(Cells reading, Cells written) {
    Instant at = reading.need(HoursLayout.READ_AT);
    return at.equals(written.need(HoursLayout.READ_AT))
        ? reading.need(HoursLayout.HOURS).toString()
        : Days.asWritten(at);
  }

  private Cells slipped(Cells reading, RecordError slip) {
    RunningHours figure = reading.need(HoursLayout.HOURS);
    Instant at = reading.need(HoursLayout.READ_AT);
    return switch (slip) {
      case READING_TRANSPOSED -> with(reading, figure(Digits.transposed(figure, draw)));
      case READING_DIGIT_LOST -> with(reading, figure(Digits.lost(figure, draw)));
      case READING_DIGIT_ADDED -> with(reading, figure(Digits.added(figure, draw)));
      case READING_TENFOLD -> with(reading, figure(figure.times(10)));
      case READING_MIXED -> with(reading, mixed(reading, figure));
      case REVOLUTIONS_AS_HOURS ->
          with(
              reading,
              figure(RunningHours.ofTenths((long) (figure.tenths() * THOUSANDS_OF_TURNS))));
      case READING_DAY_OFF -> at(reading, draw.chance(.5) ? at.plus(DAY) : at.minus(DAY));
      case READING_YEAR_OFF -> at(reading, at.minus(YEAR));
      default -> throw new IllegalStateException("no slip of a reading: " + slip);
    };
  }

  private void turnTo(Cells reading) {
    YearMonth its =
        YearMonth.from(reading.need(HoursLayout.READ_AT).minusNanos(1).atZone(ZoneOffset.UTC));
    if (!its.equals(month)) {
      month = its;
      monthBegan = run;
      turnsRead = months.chance(rates.of(RecordError.REVOLUTIONS_AS_HOURS));
    }
  }

  /** At most one; the share of each is of the readings that it can befall. */
  private Optional<RecordError> slip(Cells reading) {
    boolean isCounter = reading.need(HoursLayout.KIND) == ReadingKind.COUNTER;
    double drawn = draw.uniform();
    if (turnsRead && isCounter) {
      return Optional.of(RecordError.REVOLUTIONS_AS_HOURS);
    }
    for (RecordError kind : RecordError.SLIPS_OF_READINGS) {
      double share = rates.of(kind);
      if (drawn < share) {
        return Optional.of(kind).filter(slip -> canBefall(slip, reading, isCounter));
      }
      drawn -= share;
    }
    return Optional.empty();
  }

  /** A figure of one digit, or whose digits are alike, shows no slip. */
  private static boolean canBefall(RecordError slip, Cells reading, boolean isCounter) {
    RunningHours figure = reading.need(HoursLayout.HOURS);
    return switch (slip) {
      case READING_TRANSPOSED -> Digits.differ(figure);
      case READING_DIGIT_LOST, READING_DIGIT_ADDED, READING_TENFOLD ->
          figure.isAbove(RunningHours.ofHours(10));
      case READING_DAY_OFF, READING_YEAR_OFF -> isCounter;
      default -> true;
    };
  }

  private RunningHours mixed(Cells reading, RunningHours figure) {
    return reading.need(HoursLayout.KIND) == ReadingKind.TOTAL
        ? run
        : figure.minus(figure.min(monthBegan));
  }

  /** What the column can hold: more digits than that nobody writes. */
  private static RunningHours figure(RunningHours written) {
    RunningHours full = RunningHours.ofHours(1_000_000);
    return written.isAbove(full.minus(RunningHours.ofTenths(1)))
        ? RunningHours.ofTenths(written.tenths() % full.tenths())
        : written;
  }

  private List<SampleRow> withMinutes(List<SampleRow> log) {
    if (!minutes) {
      return log;
    }
    log.stream()
        .findFirst()
        .ifPresent(
            row ->
                errors.add(
                    RecordError.MINUTES_AS_DECIMALS,
                    RecordKind.HOURS.word(),
                    row.cells().need(HoursLayout.MACHINE),
                    "",
                    ""));
    return log.stream().map(row -> SampleRow.of(inMinutes(row.cells()))).toList();
  }

  /** Half an hour, written {@code .30} and kept to a tenth as all figures are. */
  private static Cells inMinutes(Cells reading) {
    long tenths = reading.need(HoursLayout.HOURS).tenths();
    long minutes = tenths % 10 * 6;
    return with(reading, RunningHours.ofTenths(tenths - tenths % 10 + (minutes + 5) / 10));
  }

  private static Cells with(Cells reading, RunningHours figure) {
    return row(reading, reading.need(HoursLayout.READ_AT), figure);
  }

  private static Cells at(Cells reading, Instant at) {
    return row(reading, at, reading.need(HoursLayout.HOURS));
  }

  private static Cells row(Cells reading, Instant at, RunningHours figure) {
    return Cells.of(RecordKind.HOURS)
        .with(HoursLayout.VESSEL, reading.need(HoursLayout.VESSEL))
        .with(HoursLayout.MACHINE, reading.need(HoursLayout.MACHINE))
        .with(HoursLayout.READ_AT, at)
        .with(HoursLayout.HOURS, figure)
        .with(HoursLayout.KIND, reading.need(HoursLayout.KIND))
        .build();
  }

  private static String record(Cells reading) {
    return reading.need(HoursLayout.MACHINE)
        + " "
        + Days.asWritten(reading.need(HoursLayout.READ_AT));
  }
}
