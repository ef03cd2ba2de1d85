package leadline.summary;

import java.time.Instant;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import leadline.quantity.ReportMonth;

/** The tables for those who take exports in: which file, how many rows, what is wrong. */
public final class IntakeTables {

  private final Edition edition;
  private final IntakeLog log;
  private final UnmappedWords words = new UnmappedWords();

  /**
   * The tables before any refused row is counted.
   *
   * @param knownAt when the last of the batches was committed
   * @param files of all batches known then
   */
  public IntakeTables(ReportMonth month, Instant knownAt, List<IntakeFile> files) {
    this.edition = new Edition(month, knownAt);
    this.log = new IntakeLog(files);
  }

  /**
   * Counts a refused row of one of the files; each must be added once only. What a batch that does
   * not count could not read is no one's concern any more.
   */
  public void add(RefusedLine row) {
    log.add(row);
    if (row.file().standing() == IntakeStanding.COUNTS) {
      words.add(row);
    }
  }

  /** The rows of each table, in the order of publication. */
  public Map<TableSpec, List<TableRow>> rows() {
    Map<TableSpec, List<TableRow>> tables = new LinkedHashMap<>();
    tables.put(IntakeLog.SPEC, log.rows(edition));
    tables.put(UnmappedWords.SPEC, words.rows(edition));
    return Collections.unmodifiableMap(tables);
  }
}
