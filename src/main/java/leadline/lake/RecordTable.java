package leadline.lake;

import java.util.LinkedHashMap;
import java.util.Map;
import leadline.fleet.Cells;
import leadline.fleet.Column;
import leadline.fleet.Layout;
import leadline.fleet.RecordKind;
import leadline.fleet.StoredRow;
import leadline.origin.Arrival;
import leadline.origin.FileDigest;
import leadline.origin.Origin;
import org.apache.iceberg.Schema;
import org.apache.iceberg.data.GenericRecord;
import org.apache.iceberg.data.Record;
import org.apache.iceberg.types.Types;

/** The table of one kind of record: the layout's columns, then where the row came from. */
final class RecordTable {

  /** Every layout begins with the vessel. */
  private static final int VESSEL = 0;

  static final String BATCH = "batch";
  static final String FILE = "from_file";
  private static final String DIGEST = "from_digest";
  private static final String LINE = "from_line";
  private static final String RAW = "raw";
  private static final String EXTRAS = "extras";

  private RecordTable() {}

  static LakeTable of(RecordKind kind) {
    return new LakeTable(LakeTable.RECORDS, kind.word());
  }

  static Schema schema(RecordKind kind) {
    Schemas schema = new Schemas();
    for (Column<?> column : kind.layout().columns()) {
      if (column.need() == Column.Need.OPTIONAL) {
        schema.optional(column.name(), CellCodec.typeOf(column.type()), column.meaning());
      } else {
        schema.required(column.name(), CellCodec.typeOf(column.type()), column.meaning());
      }
    }
    return schema
        .text(BATCH, "the batch that brought the row")
        .text(FILE, "the export file")
        .text(DIGEST, "SHA-256 of the export file")
        .count(LINE, "line on which the row begins, from 1")
        .text(RAW, "the row's text as it stood in the file")
        .words(EXTRAS, "cells of columns that the layout does not know, by header")
        .build();
  }

  /** What the history needs of a stored record: all but the raw text. */
  static Schema projection(Schema stored) {
    return stored.select(
        stored.columns().stream()
            .map(Types.NestedField::name)
            .filter(name -> !name.equals(RAW) && !name.equals(EXTRAS))
            .toList());
  }

  static Record encode(Schema schema, StoredRow row, String batch) {
    Cells cells = row.cells();
    Record stored = GenericRecord.create(schema);
    for (Column<?> column : cells.kind().layout().columns()) {
      cells.find(column).ifPresent(value -> stored.set(column.index(), CellCodec.encode(value)));
    }
    int source = cells.kind().layout().columns().size();
    stored.set(source, batch);
    stored.set(source + 1, row.origin().file());
    stored.set(source + 2, row.origin().digest().hex());
    stored.set(source + 3, row.origin().line());
    stored.set(source + 4, row.raw());
    stored.set(source + 5, new LinkedHashMap<>(row.extras()));
    return stored;
  }

  static String vesselOf(Record stored) {
    return stored.get(VESSEL, String.class);
  }

  static String batchOf(RecordKind kind, Record stored) {
    return stored.get(kind.layout().columns().size(), String.class);
  }

  /** The cells of a stored record. */
  static Cells cells(RecordKind kind, Record stored) {
    Layout layout = kind.layout();
    Cells.Builder cells = Cells.of(kind);
    for (Column<?> column : layout.columns()) {
      Object value = stored.get(column.index());
      if (value != null) {
        put(cells, column, value);
      }
    }
    return cells.build();
  }

  private static <T> void put(Cells.Builder cells, Column<T> column, Object stored) {
    cells.with(column, CellCodec.decode(column, stored));
  }

  /** Where a stored record came from, and in which order it reached the lake. */
  static Arrival arrival(RecordKind kind, Record stored, Map<String, Long> placeOfBatch) {
    int source = kind.layout().columns().size();
    Long place = placeOfBatch.get(stored.get(source, String.class));
    if (place == null) {
      throw new IllegalArgumentException("a row of a batch that does not count");
    }
    return new Arrival(
        place,
        new Origin(
            stored.get(source + 1, String.class),
            new FileDigest(stored.get(source + 2, String.class)),
            stored.get(source + 3, Long.class)));
  }
}
