package leadline.lake;

import leadline.problem.Problem;
import org.apache.iceberg.Schema;
import org.apache.iceberg.data.GenericRecord;
import org.apache.iceberg.data.Record;

/** The table of problems that the history met, of every run. */
final class Problems {

  static final Schema SCHEMA =
      new Schemas()
          .text("run", "the run that met the problem")
          .text("vessel", "the vessel")
          .text("kind", "the kind of problem")
          .text("record", "the record in question")
          .text("sentence", "what is wrong and what would settle it")
          .text("from_file", "the export file")
          .text("from_digest", "SHA-256 of the export file")
          .count("from_line", "line on which the row begins, from 1")
          .build();

  private Problems() {}

  static Record encode(Schema schema, String run, Problem problem) {
    Record row = GenericRecord.create(schema);
    row.setField("run", run);
    row.setField("vessel", problem.vessel());
    row.setField("kind", problem.kind());
    row.setField("record", problem.record());
    row.setField("sentence", problem.sentence());
    row.setField("from_file", problem.origin().file());
    row.setField("from_digest", problem.origin().digest().hex());
    row.setField("from_line", problem.origin().line());
    return row;
  }
}
