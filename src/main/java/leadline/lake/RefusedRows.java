package leadline.lake;

import java.util.ArrayList;
import java.util.List;
import leadline.intake.RefusedRow;
import leadline.problem.RowFault;
import org.apache.iceberg.Schema;
import org.apache.iceberg.data.GenericRecord;
import org.apache.iceberg.data.Record;

/** The table of refused rows: the row as it stood, and every rule it broke. */
final class RefusedRows {

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
                  .text("sentence", "what is wrong and what to write instead"),
              "every rule that the row broke")
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
      faults.add(entry);
    }
    row.setField("faults", faults);
    return row;
  }
}
