package leadline.page;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import leadline.publish.CsvTable;
import leadline.summary.TableColumn;
import leadline.summary.TableRow;
import leadline.summary.TableSpec;

/** One or three columns of a published table as one column of a page. */
sealed interface Shown {

  TableView.Head head();

  Cell cell(TableRow row);

  /** A column, together with its limits where the table has them. */
  static Shown of(TableSpec spec, TableColumn<?> column) {
    if (FigureFormat.of(column).isNumber()) {
      Optional<TableColumn<?>> lower = named(spec, column.name() + "_lo95");
      Optional<TableColumn<?>> upper = named(spec, column.name() + "_hi95");
      if (lower.isPresent() && upper.isPresent()) {
        return new WithLimits(column, lower.get(), upper.get());
      }
    }
    return new Single(column);
  }

  private static Optional<TableColumn<?>> named(TableSpec spec, String name) {
    return spec.columns().stream().filter(column -> column.name().equals(name)).findFirst();
  }

  /** A column by itself. */
  record Single(TableColumn<?> column) implements Shown {
    @Override
    public TableView.Head head() {
      return new TableView.Head(
          column.name(),
          Heading.of(column),
          FigureFormat.of(column).isNumber() ? "number" : "words",
          column.meaning());
    }

    @Override
    public Cell cell(TableRow row) {
      return row.find(column)
          .map(value -> FigureFormat.of(column).cell(value))
          .orElseGet(Cell.None::new);
    }
  }

  /** An estimate with its limits. */
  record WithLimits(TableColumn<?> estimate, TableColumn<?> lower, TableColumn<?> upper)
      implements Shown {

    @Override
    public TableView.Head head() {
      return new TableView.Head(
          String.join(" ", List.of(estimate.name(), lower.name(), upper.name())),
          Heading.of(estimate) + " (95 % limits)",
          "number",
          estimate.meaning());
    }

    @Override
    public Cell cell(TableRow row) {
      Optional<Double> value = row.find(estimate).map(Double.class::cast);
      Optional<Double> from = row.find(lower).map(Double.class::cast);
      Optional<Double> to = row.find(upper).map(Double.class::cast);
      if (value.isEmpty() && from.isEmpty() && to.isEmpty()) {
        return new Cell.None();
      }
      EstimateInWords inWords = new EstimateInWords(FigureFormat.of(estimate));
      return new Cell.Estimate(
          inWords.figure(value), inWords.limits(from, to), exact(value), exact(from), exact(to));
    }

    private static String exact(Optional<Double> number) {
      return number.map(CsvTable::shortest).orElse("");
    }
  }

  /**
   * A column of words of which some lead to another page.
   *
   * @param link from a row; empty where there is none
   */
  record Linked(Shown words, Function<TableRow, Optional<String>> link) implements Shown {
    @Override
    public TableView.Head head() {
      return words.head();
    }

    @Override
    public Cell cell(TableRow row) {
      Cell cell = words.cell(row);
      return cell instanceof Cell.Words text
          ? link.apply(row).<Cell>map(to -> new Cell.Link(text.text(), to)).orElse(cell)
          : cell;
    }
  }
}
