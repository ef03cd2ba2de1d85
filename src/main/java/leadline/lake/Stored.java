package leadline.lake;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.Function;
import org.apache.iceberg.Table;
import org.apache.iceberg.data.IcebergGenerics;
import org.apache.iceberg.data.Record;
import org.apache.iceberg.io.CloseableIterable;

/** Typed access to the fields of stored rows. */
final class Stored {

  private Stored() {}

  static <T> List<T> list(Table table, Function<Record, T> decode, Comparator<T> order) {
    List<T> rows = new ArrayList<>();
    try (CloseableIterable<Record> stored = RowFiles.readAll(table)) {
      stored.forEach(row -> rows.add(decode.apply(row)));
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + table.name(), e);
    }
    rows.sort(order);
    return rows;
  }

  /** Hands out each row of a table, with these columns only. */
  static void forEach(Table table, List<String> columns, Consumer<Record> reader) {
    try (CloseableIterable<Record> rows =
        IcebergGenerics.read(table).select(columns.toArray(String[]::new)).build()) {
      rows.forEach(reader);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + table.name(), e);
    }
  }

  static OffsetDateTime moment(Instant moment) {
    return moment.atOffset(ZoneOffset.UTC);
  }

  static Instant moment(Record row, String field) {
    return ((OffsetDateTime) row.getField(field)).toInstant();
  }

  static String text(Record row, String field) {
    return row.getField(field).toString();
  }

  static long count(Record row, String field) {
    return (Long) row.getField(field);
  }

  @SuppressWarnings("unchecked") // the schema says so
  static List<Record> rows(Record row, String field) {
    return (List<Record>) row.getField(field);
  }

  /** A map of words to counts, in the words' order. */
  static SortedMap<String, Long> counts(Record row, String field) {
    SortedMap<String, Long> counts = new TreeMap<>();
    ((Map<?, ?>) row.getField(field))
        .forEach((word, count) -> counts.put(word.toString(), (Long) count));
    return counts;
  }
}
