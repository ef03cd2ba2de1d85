package leadline.lake;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadline.summary.TableColumn;
import leadline.summary.TableRow;
import leadline.summary.TableSpec;
import leadline.summary.ValueType;
import org.apache.iceberg.Schema;
import org.apache.iceberg.Table;
import org.apache.iceberg.data.GenericRecord;
import org.apache.iceberg.data.IcebergGenerics;
import org.apache.iceberg.data.Record;
import org.apache.iceberg.expressions.Expressions;
import org.apache.iceberg.io.CloseableIterable;
import org.apache.iceberg.types.Type;
import org.apache.iceberg.types.Types;

/** A published table as the lake keeps it: the run and the row's place in it, then its columns. */
final class ResultTable {

  private static final String RUN = "run";
  private static final String PLACE = "row_no";

  private final TableSpec spec;
  private final Table table;

  ResultTable(Lake lake, TableSpec spec) {
    this.spec = spec;
    this.table = lake.table(new LakeTable(LakeTable.RESULTS, spec.name()), schema(spec));
  }

  private static Schema schema(TableSpec spec) {
    Schemas schema = new Schemas().text(RUN, "the run that wrote it").count(PLACE, "row's place");
    for (TableColumn<?> column : spec.columns()) {
      if (column.need() == TableColumn.Need.OPTIONAL) {
        schema.optional(column.name(), typeOf(column.type()), column.meaning());
      } else {
        schema.required(column.name(), typeOf(column.type()), column.meaning());
      }
    }
    return schema.build();
  }

  private static Type typeOf(ValueType<?> type) {
    if (type instanceof ValueType.Count) {
      return Types.LongType.get();
    } else if (type instanceof ValueType.Real) {
      return Types.DoubleType.get();
    } else if (type instanceof ValueType.Moment) {
      return Types.TimestampType.withZone();
    }
    return Types.StringType.get();
  }

  void append(Lake lake, String run, List<TableRow> rows) {
    List<Record> records = new ArrayList<>();
    for (TableRow row : rows) {
      records.add(encode(run, records.size(), row));
    }
    lake.append(table, RowFiles.write(table, records.iterator()));
  }

  private Record encode(String run, long place, TableRow row) {
    Record record = GenericRecord.create(table.schema());
    record.setField(RUN, run);
    record.setField(PLACE, place);
    for (TableColumn<?> column : spec.columns()) {
      row.find(column).ifPresent(value -> record.setField(column.name(), CellCodec.encode(value)));
    }
    return record;
  }

  /** The rows of one run, in the order in which they were written. */
  List<TableRow> rows(String run) {
    List<Record> stored = new ArrayList<>();
    try (CloseableIterable<Record> records =
        IcebergGenerics.read(table).where(Expressions.equal(RUN, run)).build()) {
      records.forEach(stored::add);
    } catch (java.io.IOException e) {
      throw new java.io.UncheckedIOException("cannot read " + table.name(), e);
    }
    stored.sort(java.util.Comparator.comparing(record -> Stored.count(record, PLACE)));
    return stored.stream().map(this::decode).toList();
  }

  private TableRow decode(Record record) {
    TableRow.Builder row = spec.row();
    for (TableColumn<?> column : spec.columns()) {
      Optional.ofNullable(record.getField(column.name()))
          .ifPresent(value -> put(row, column, value));
    }
    return row.build();
  }

  @SuppressWarnings("unchecked") // the stored type follows the column's
  private static void put(TableRow.Builder row, TableColumn<?> column, Object stored) {
    if (column.type() instanceof ValueType.Text) {
      row.with((TableColumn<String>) column, stored.toString());
    } else if (column.type() instanceof ValueType.Count) {
      row.with((TableColumn<Long>) column, (Long) stored);
    } else if (column.type() instanceof ValueType.Real) {
      row.with((TableColumn<Double>) column, (Double) stored);
    } else {
      row.with((TableColumn<Instant>) column, ((OffsetDateTime) stored).toInstant());
    }
  }
}
