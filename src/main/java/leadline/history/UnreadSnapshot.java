package leadline.history;

import java.util.Comparator;
import java.util.List;
import leadline.fleet.Cells;
import leadline.fleet.RecordKind;
import leadline.origin.Origin;
import leadline.problem.Problem;

/**
 * The newest full snapshot lacks records, and something of it could not be read.
 *
 * @param lacking how many records it lacks
 * @param first one of them, as the ship names it
 * @param origin the row of that record
 */
public record UnreadSnapshot(
    String vessel, String source, RecordKind records, long lacking, String first, Origin origin)
    implements Problem {

  static UnreadSnapshot lacking(String source, RecordKind kind, List<ArrivedRow> rows) {
    ArrivedRow first = rows.stream().min(Comparator.comparing(ArrivedRow::arrival)).orElseThrow();
    Cells cells = first.row().cells();
    return new UnreadSnapshot(
        cells.key().get(0).toString(),
        source,
        kind,
        rows.stream().map(row -> row.row().cells().key()).distinct().count(),
        cells.keyBelowVessel(),
        first.row().origin());
  }

  @Override
  public String record() {
    return records.word() + " of " + source;
  }

  @Override
  public String evidence() {
    return ("The newest snapshot of %s by %s could not be read in whole. Records that it lacks and"
            + " that were there before: %d, the first of them %s. None is taken as deleted.")
        .formatted(records.word(), source, lacking, first);
  }

  @Override
  public String request() {
    return "Mend what the intake refused, and export the snapshot again.";
  }
}
