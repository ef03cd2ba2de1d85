package leadline.sample;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;

/** The tenths of an hour that a machine had turned at the end of each day, since the first. */
final class MachineDays {

  private static final int YEAR = 365;
  private static final double DAY_TENTHS = 240;
  private static final int FEWEST_IDLE_DAYS = 10;
  private static final int MOST_IDLE_DAYS = 25;

  private final LocalDate first;
  private final long[] ends;

  private MachineDays(LocalDate first, long[] ends) {
    this.first = first;
    this.ends = ends;
  }

  static MachineDays run(LocalDate first, LocalDate last, Running running, Draw draw) {
    long[] ends = new long[(int) ChronoUnit.DAYS.between(first, last) + 1];
    long tenths = 0;
    double idle = 0;
    double mean = 0;
    for (int day = 0; day < ends.length; day++) {
      if (day % YEAR == 0) {
        int idleDays = draw.among(FEWEST_IDLE_DAYS, MOST_IDLE_DAYS);
        idle = idleDays / (double) YEAR;
        mean = 10 * running.hoursInAYear(draw) / (YEAR - idleDays);
      }
      if (!draw.chance(idle)) {
        double spread = Math.min(mean, DAY_TENTHS - mean);
        tenths += Math.round(draw.between(mean - spread, mean + spread));
      }
      ends[day] = tenths;
    }
    return new MachineDays(first, ends);
  }

  /** The same machine lying still on its first day. */
  MachineDays beginningStill() {
    long[] later = new long[ends.length];
    Arrays.setAll(later, day -> ends[day] - ends[0]);
    return new MachineDays(first, later);
  }

  LocalDate first() {
    return first;
  }

  LocalDate date(int day) {
    return first.plusDays(day);
  }

  /** Counted from 0; negative before the first day. */
  int day(LocalDate date) {
    return (int) ChronoUnit.DAYS.between(first, date);
  }

  int count() {
    return ends.length;
  }

  /** Tenths turned since the first day began; none at the end of a day before it. */
  long endOf(int day) {
    return day < 0 ? 0 : ends[day];
  }

  long end() {
    return ends[ends.length - 1];
  }

  /** The first day at whose end the machine had turned so much; the count of days if never. */
  int reaching(long tenths) {
    int low = 0;
    int high = ends.length;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (ends[middle] >= tenths) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low;
  }
}
