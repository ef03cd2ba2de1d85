package leadline.lake;

import java.io.Serializable;
import java.util.List;
import leadline.fleet.Column;
import leadline.fleet.RecordKind;
import leadline.fleet.Written;
import org.apache.iceberg.catalog.TableIdentifier;

/** The name of a table in the lake. */
public record LakeTable(String namespace, String name) implements Serializable {

  static final String RECORDS = "records";
  static final String RESULTS = "results";

  static final LakeTable REFUSED = new LakeTable(RECORDS, "refused");
  static final LakeTable BATCHES = new LakeTable(RECORDS, "batches");
  static final LakeTable WITHDRAWALS = new LakeTable(RECORDS, "withdrawals");
  static final LakeTable RUNS = new LakeTable(RESULTS, "runs");
  static final LakeTable PROBLEMS = new LakeTable(RESULTS, "problems");
  static final LakeTable PART_LIVES = new LakeTable(RESULTS, "part_lives");

  boolean isOfRecords() {
    return namespace.equals(RECORDS);
  }

  /** The column that names the batch or run that wrote a row. */
  String owner() {
    return isOfRecords() ? "batch" : "run";
  }

  /** The columns by which the rows of a file are sorted. */
  List<String> order() {
    return Written.read(RecordKind.class, name)
        .filter(kind -> isOfRecords())
        .map(kind -> kind.layout().sortedBy().stream().map(Column::name).toList())
        .orElseGet(() -> List.of(owner()));
  }

  TableIdentifier identifier() {
    return TableIdentifier.of(namespace, name);
  }

  @Override
  public String toString() {
    return namespace + "." + name;
  }
}
