package leadline.history;

import java.util.List;
import leadline.fleet.Cells;
import leadline.fleet.RecordKind;

/** What tells a record from the others of its vessel: its kind, and the values of its key. */
record RecordKey(RecordKind kind, List<Object> values) {

  /** The condition that a sheet asks for, of the several that a part may have. */
  private static final long FIRST_MODE = 1;

  static RecordKey of(Cells cells) {
    return new RecordKey(cells.kind(), cells.key());
  }

  static RecordKey ofOverhaul(String vessel, String overhaul) {
    return new RecordKey(RecordKind.OVERHAULS, List.of(vessel, overhaul));
  }

  static RecordKey ofFinding(String vessel, String overhaul, String part) {
    return new RecordKey(RecordKind.FINDINGS, List.of(vessel, overhaul, part, FIRST_MODE));
  }
}
