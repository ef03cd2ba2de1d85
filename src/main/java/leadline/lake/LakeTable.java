package leadline.lake;

import java.io.Serializable;
import org.apache.iceberg.catalog.TableIdentifier;

/** The name of a table in the lake. */
public record LakeTable(String namespace, String name) implements Serializable {

  static final String RECORDS = "records";
  static final String RESULTS = "results";

  static final LakeTable REFUSED = new LakeTable(RECORDS, "refused");
  static final LakeTable BATCHES = new LakeTable(RECORDS, "batches");
  static final LakeTable RUNS = new LakeTable(RESULTS, "runs");
  static final LakeTable PROBLEMS = new LakeTable(RESULTS, "problems");
  static final LakeTable PART_LIVES = new LakeTable(RESULTS, "part_lives");

  TableIdentifier identifier() {
    return TableIdentifier.of(namespace, name);
  }

  @Override
  public String toString() {
    return namespace + "." + name;
  }
}
