package leadline.page;

import java.util.Optional;
import java.util.OptionalDouble;
import leadline.chart.Interval;
import leadline.chart.IntervalChart;
import leadline.summary.EstimateColumns;
import leadline.summary.TableRow;

/** A row of a table as a row of a chart. */
final class IntervalRows {

  private IntervalRows() {}

  static IntervalChart.Row of(String label, TableRow row, EstimateColumns columns) {
    return of(label, row, columns, Optional.empty(), Optional.empty());
  }

  /**
   * @param least what the figure can be at least whatever is not known; empty where nothing is open
   */
  static IntervalChart.Row of(
      String label,
      TableRow row,
      EstimateColumns columns,
      Optional<Double> least,
      Optional<Double> most) {
    String inWords =
        row.find(columns.estimate())
            .map(value -> inWords(row, columns))
            .orElseGet(() -> Verdicts.of(row));
    return new IntervalChart.Row(
        label, interval(row, columns, inWords), number(least), number(most));
  }

  static Interval interval(TableRow row, EstimateColumns columns, String inWords) {
    return new Interval(
        number(row.find(columns.estimate())),
        number(row.find(columns.lower())),
        number(row.find(columns.upper())),
        inWords);
  }

  static String inWords(TableRow row, EstimateColumns columns) {
    return new EstimateInWords(FigureFormat.of(columns.estimate()))
        .of(row.find(columns.estimate()), row.find(columns.lower()), row.find(columns.upper()));
  }

  static OptionalDouble number(Optional<Double> number) {
    return number.map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
  }
}
