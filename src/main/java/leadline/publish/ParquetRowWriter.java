package leadline.publish;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import leadline.summary.TableColumn;
import leadline.summary.TableRow;
import leadline.summary.TableSpec;
import org.apache.hadoop.conf.Configuration;
import org.apache.parquet.conf.ParquetConfiguration;
import org.apache.parquet.hadoop.api.WriteSupport;
import org.apache.parquet.io.api.Binary;
import org.apache.parquet.io.api.RecordConsumer;
import org.apache.parquet.schema.LogicalTypeAnnotation;
import org.apache.parquet.schema.MessageType;
import org.apache.parquet.schema.PrimitiveType.PrimitiveTypeName;
import org.apache.parquet.schema.Type;
import org.apache.parquet.schema.Types;
import org.jspecify.annotations.Nullable;

/** Hands the values of a row to Parquet, column by column. */
final class ParquetRowWriter extends WriteSupport<TableRow> {

  private final TableSpec spec;
  private @Nullable RecordConsumer consumer;

  ParquetRowWriter(TableSpec spec) {
    this.spec = spec;
  }

  @Override
  @SuppressWarnings("deprecation") // abstract above, though Parquet calls the other one
  public WriteContext init(Configuration hadoop) {
    return context();
  }

  @Override
  public WriteContext init(ParquetConfiguration parquet) {
    return context();
  }

  private WriteContext context() {
    List<Type> fields = spec.columns().stream().map(ParquetRowWriter::type).toList();
    return new WriteContext(new MessageType(spec.name(), fields), Map.of());
  }

  private static Type type(TableColumn<?> column) {
    Type.Repetition repetition =
        column.need() == TableColumn.Need.OPTIONAL
            ? Type.Repetition.OPTIONAL
            : Type.Repetition.REQUIRED;
    return switch (CellKind.of(column)) {
      case TEXT ->
          Types.primitive(PrimitiveTypeName.BINARY, repetition)
              .as(LogicalTypeAnnotation.stringType())
              .named(column.name());
      case COUNT -> Types.primitive(PrimitiveTypeName.INT64, repetition).named(column.name());
      case REAL -> Types.primitive(PrimitiveTypeName.DOUBLE, repetition).named(column.name());
      case MOMENT ->
          Types.primitive(PrimitiveTypeName.INT64, repetition)
              .as(LogicalTypeAnnotation.timestampType(true, LogicalTypeAnnotation.TimeUnit.MICROS))
              .named(column.name());
    };
  }

  @Override
  public void prepareForWrite(RecordConsumer recordConsumer) {
    consumer = recordConsumer;
  }

  @Override
  public void write(TableRow row) {
    RecordConsumer to = Objects.requireNonNull(consumer, "Parquet prepares before it writes");
    to.startMessage();
    for (int index = 0; index < spec.columns().size(); index++) {
      TableColumn<?> column = spec.columns().get(index);
      Optional<?> value = row.find(column);
      if (value.isPresent()) {
        to.startField(column.name(), index);
        write(to, CellKind.of(column), value.get());
        to.endField(column.name(), index);
      }
    }
    to.endMessage();
  }

  private static void write(RecordConsumer to, CellKind kind, Object value) {
    switch (kind) {
      case TEXT -> to.addBinary(Binary.fromString((String) value));
      case COUNT -> to.addLong((Long) value);
      case REAL -> to.addDouble((Double) value);
      case MOMENT -> to.addLong(ChronoUnit.MICROS.between(Instant.EPOCH, (Instant) value));
    }
  }
}
