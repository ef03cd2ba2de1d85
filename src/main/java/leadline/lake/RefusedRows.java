package leadline.lake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import leadline.fleet.RecordKind;
import leadline.fleet.Written;
import leadline.intake.RefusedRow;
import leadline.origin.FileDigest;
import leadline.problem.NameFault;
import leadline.problem.RowFault;
import leadline.summary.IntakeFile;
import leadline.summary.RefusedLine;
import org.apache.iceberg.Schema;
import org.apache.iceberg.Table;
import org.apache.iceberg.data.GenericRecord;
import org.apache.iceberg.data.Record;
import org.apache.iceberg.types.Types;

/** The table of refused rows: the row as it stood, and every rule it broke. */
final class RefusedRows {

  private static final String WORD = "unknown_word";
  private static final String VESSEL = "vessel";
  private static final String KEY = "record_key";

  static final Schema SCHEMA =
      new Schemas()
          .text("batch", "the batch that refused the row")
          .text("kind", "what the file holds")
          .text("from_file", "the export file")
          .text("from_digest", "SHA-256 of the export file")
          .count("from_line", "line on which the row begins, from 1")
          .text("raw", "the row's text as it stood in the file")
          .rows(
              "faults",
              new Schemas()
                  .text("rule", "the rule the row broke")
                  .text("column", "the column; empty where the whole row is at fault")
                  .text("sentence", "what is wrong and what to write instead")
                  .optional(WORD, Types.StringType.get(), "the word that the column does not know"),
              "every rule that the row broke")
          .optional(VESSEL, Types.StringType.get(), "the vessel, where the row names one")
          .optional(KEY, Types.StringType.get(), "the record's key below its vessel, if readable")
          .build();

  private RefusedRows() {}

  static Record encode(Schema schema, RefusedRow refused, String batch) {
    Record row = GenericRecord.create(schema);
    row.setField("batch", batch);
    row.setField("kind", refused.kind().word());
    row.setField("from_file", refused.origin().file());
    row.setField("from_digest", refused.origin().digest().hex());
    row.setField("from_line", refused.origin().line());
    row.setField("raw", refused.raw());
    List<Record> faults = new ArrayList<>();
    for (RowFault fault : refused.faults()) {
      Record entry =
          GenericRecord.create(schema.findType("faults").asListType().elementType().asStructType());
      entry.setField("rule", fault.rule());
      entry.setField("column", fault.column());
      entry.setField("sentence", fault.sentence());
      if (fault instanceof NameFault unknown) {
        entry.setField(WORD, unknown.text());
      }
      faults.add(entry);
    }
    row.setField("faults", faults);
    if (!refused.vessel().isEmpty()) {
      row.setField(VESSEL, refused.vessel());
    }
    if (!refused.key().isEmpty()) {
      row.setField(KEY, refused.key());
    }
    return row;
  }

  /** Hands out the refused rows of all batches, without their own text and the sentences. */
  static void forEach(Table table, Consumer<Record> reader) {
    Stored.forEach(
        table,
        List.of(
            "batch",
            "kind",
            "from_digest",
            "from_line",
            VESSEL,
            "faults.element.rule",
            "faults.element.column",
            "faults.element." + WORD),
        reader);
  }

  /** Hands out the refused rows of all batches, with what names their records. */
  static void forEachKey(Table table, Consumer<Record> reader) {
    List<String> columns = new ArrayList<>(List.of("batch", "kind"));
    Stream.of(VESSEL, KEY)
        .filter(name -> table.schema().findField(name) != null)
        .forEach(columns::add);
    Stored.forEach(table, columns, reader);
  }

  static RecordKind kind(Record row) {
    return Written.read(RecordKind.class, Stored.text(row, "kind")).orElseThrow();
  }

  static Optional<String> vessel(Record row) {
    return optional(row, VESSEL);
  }

  static String key(Record row) {
    return optional(row, KEY).orElse("");
  }

  static String batch(Record row) {
    return Stored.text(row, "batch");
  }

  static FileDigest digest(Record row) {
    return new FileDigest(Stored.text(row, "from_digest"));
  }

  static RefusedLine decode(Record row, IntakeFile file, VesselNames names) {
    return new RefusedLine(
        file,
        Stored.count(row, "from_line"),
        Stored.text(row, "kind"),
        vessel(row).map(names::newest),
        Stored.rows(row, "faults").stream().map(RefusedRows::brokenRule).toList());
  }

  private static RefusedLine.BrokenRule brokenRule(Record fault) {
    return new RefusedLine.BrokenRule(
        Stored.text(fault, "rule"), Stored.text(fault, "column"), optional(fault, WORD));
  }

  private static Optional<String> optional(Record row, String field) {
    return Optional.ofNullable(row.getField(field)).map(Object::toString);
  }
}
