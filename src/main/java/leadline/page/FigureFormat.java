package leadline.page;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import leadline.publish.CellKind;
import leadline.publish.CsvTable;
import leadline.publish.Numbers;
import leadline.summary.TableColumn;

/**
 * How the values of a column are read and copied; the unit of hours and rates is in the heading.
 */
enum FigureFormat {
  WORDS {
    @Override
    Cell cell(Object value) {
      return new Cell.Words((String) value);
    }
  },
  MOMENT {
    @Override
    Cell cell(Object value) {
      return new Cell.Words(((Instant) value).truncatedTo(ChronoUnit.SECONDS).toString());
    }
  },
  COUNT {
    @Override
    Cell cell(Object value) {
      return new Cell.Figure(Numbers.count((Long) value), value.toString());
    }
  },
  HOURS {
    @Override
    String inWords(double number) {
      return Numbers.wholeHours(number);
    }
  },
  RATE {
    @Override
    String inWords(double number) {
      return Numbers.rate(number);
    }
  },
  SHARE {
    @Override
    String inWords(double number) {
      return Numbers.share(number);
    }
  },
  DECIMAL {
    @Override
    String inWords(double number) {
      return String.format(Locale.ROOT, "%.2f", number);
    }
  };

  static FigureFormat of(TableColumn<?> column) {
    return switch (CellKind.of(column)) {
      case TEXT -> WORDS;
      case COUNT -> COUNT;
      case MOMENT -> MOMENT;
      case REAL -> ofReal(column);
    };
  }

  private static FigureFormat ofReal(TableColumn<?> column) {
    if (column.unit().equals("h")) {
      return HOURS;
    } else if (column.unit().equals("1")) {
      return CellKind.isShare(column) ? SHARE : DECIMAL;
    }
    return RATE;
  }

  boolean isNumber() {
    return this != WORDS && this != MOMENT;
  }

  String inWords(double number) {
    throw new IllegalStateException("no number: " + this);
  }

  Cell cell(Object value) {
    return new Cell.Figure(inWords((Double) value), CsvTable.shortest((Double) value));
  }
}
