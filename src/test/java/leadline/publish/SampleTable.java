package leadline.publish;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadline.summary.TableColumn;
import leadline.summary.TableColumn.Need;
import leadline.summary.TableRow;
import leadline.summary.TableSpec;
import leadline.summary.ValueType;

/** An invented table with a column of every type and need, and values that writers stumble over. */
final class SampleTable {

  static final TableColumn<String> COMPONENT =
      new TableColumn<>("component", new ValueType.Text(), "", Need.KEY, "the component");
  static final TableColumn<Instant> KNOWN_AT =
      new TableColumn<>("known_at", new ValueType.Moment(), "", Need.KEY, "what was known when");
  static final TableColumn<Long> EVENTS =
      new TableColumn<>("events", new ValueType.Count(), "1", Need.REQUIRED, "events counted");
  static final TableColumn<Double> RATE =
      new TableColumn<>(
          "rate_per_million_h",
          new ValueType.Real(),
          "per million h",
          Need.OPTIONAL,
          "events per million running hours");
  static final TableColumn<String> REMARK =
      new TableColumn<>("remark", new ValueType.Text(), "", Need.OPTIONAL, "in the ship's words");

  static final TableSpec SPEC =
      new TableSpec(
          "sample_rates",
          "An invented table: \"rates\", by component.",
          List.of(COMPONENT, KNOWN_AT, EVENTS, RATE, REMARK));

  static final Instant WHOLE_SECOND = Instant.parse("2025-01-10T12:00:00Z");
  static final Instant MICROSECONDS = Instant.parse("2025-01-10T12:00:00.123456Z");

  /** Texts with separators, quotes, line ends, blanks, other scripts, formulas. */
  static final List<String> REMARKS =
      List.of(
          "plain",
          "a, b; c",
          "said \"broken\"",
          "two\nlines",
          "carriage\r\nreturn",
          " blanks around ",
          "Düse gewechselt, ノズル, ψ 😀",
          "=1+1",
          "+45 bar",
          "-45 bar, \"low\"",
          "@home",
          "\ttabbed",
          "\rreturned",
          "'quoted'",
          "NULL",
          "#N/A",
          "007");

  /** Reals of ordinary and extraordinary size, and those at which shortest forms go wrong. */
  static final List<Double> RATES =
      List.of(
          0.0,
          0.1,
          1.0 / 3,
          212.0,
          9.999999999999999e22,
          2e-3,
          9.999999e-7,
          123456789.125,
          Double.MIN_VALUE,
          Double.MAX_VALUE,
          -17.25);

  private SampleTable() {}

  static PublishedTable table() {
    return new PublishedTable(SPEC, rows());
  }

  static List<TableRow> rows() {
    List<TableRow> rows = new ArrayList<>();
    for (int index = 0; index < REMARKS.size(); index++) {
      rows.add(
          row(
              "component-%02d".formatted(index),
              index,
              Optional.of(RATES.get(index % RATES.size())),
              Optional.of(REMARKS.get(index))));
    }
    rows.add(row("component-98", Long.MAX_VALUE, Optional.empty(), Optional.empty()));
    rows.add(row("component-99", 0, Optional.of(1e15), Optional.empty()));
    return rows;
  }

  private static TableRow row(
      String component, long events, Optional<Double> rate, Optional<String> remark) {
    return SPEC.row()
        .with(COMPONENT, component)
        .with(KNOWN_AT, events % 2 == 0 ? WHOLE_SECOND : MICROSECONDS)
        .with(EVENTS, events)
        .with(RATE, rate)
        .with(REMARK, remark)
        .build();
  }
}
