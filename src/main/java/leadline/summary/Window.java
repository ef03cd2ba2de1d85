package leadline.summary;

import java.time.Instant;
import leadline.fleet.Written;
import leadline.quantity.Period;
import leadline.quantity.ReportMonth;

/** The stretch of time, ending with the month, in which a row counts. */
public enum Window implements Written {
  /** All that was observed so far. */
  SINCE_START {
    @Override
    Period endingWith(ReportMonth month) {
      return new Period(Instant.MIN, month.end());
    }
  },
  TWELVE_MONTHS {
    @Override
    Period endingWith(ReportMonth month) {
      return new Period(month.startOfLast(12), month.end());
    }

    @Override
    public String word() {
      return "12-months";
    }
  },
  MONTH {
    @Override
    Period endingWith(ReportMonth month) {
      return new Period(month.startOfLast(1), month.end());
    }
  };

  abstract Period endingWith(ReportMonth month);
}
