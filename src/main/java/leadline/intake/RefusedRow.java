package leadline.intake;

import java.io.Serializable;
import java.util.List;
import leadline.fleet.RecordKind;
import leadline.origin.Origin;
import leadline.problem.RowFault;

/**
 * A row that the lake does not take.
 *
 * @param vessel the vessel that the row names; empty where none could be read
 * @param key the record's key below its vessel; empty where it could not be read
 * @param raw the row's text as it stood in the file; bytes that are no text are shown as {@code
 *     \xNN}
 * @param faults every rule that it broke, at least one
 */
public record RefusedRow(
    RecordKind kind, Origin origin, String vessel, String key, String raw, List<RowFault> faults)
    implements Serializable {

  public RefusedRow {
    faults = List.copyOf(faults);
    if (faults.isEmpty()) {
      throw new IllegalArgumentException("a row is refused for a reason: " + origin);
    }
  }

  /** Each fault with its file, line and column. */
  public List<String> sentences() {
    return faults.stream().map(this::sentence).toList();
  }

  private String sentence(RowFault fault) {
    return origin.file()
        + ", line "
        + origin.line()
        + (fault.column().isEmpty() ? "" : ", column " + fault.column())
        + ": "
        + fault.sentence();
  }
}
