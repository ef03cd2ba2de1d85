package leadline.lake;

import java.io.Serializable;
import java.util.List;
import leadline.fleet.RecordKind;
import leadline.intake.ExportFile;
import leadline.intake.FileOutcome;
import leadline.intake.RefusedRow;
import org.apache.iceberg.DataFile;

/**
 * What one task made of some exports of one kind. Nothing of it is visible yet.
 *
 * @param firstRefused a few refused rows, for people
 */
public record Loaded(
    RecordKind kind,
    List<Outcome> outcomes,
    List<DataFile> recordFiles,
    List<DataFile> refusedFiles,
    List<RefusedRow> firstRefused)
    implements Serializable {

  /** Every row told as stored or refused must lie in a file: none vanishes between the two. */
  public Loaded {
    requireWritten(recordFiles, outcomes.stream().mapToLong(Outcome::stored).sum());
    requireWritten(refusedFiles, outcomes.stream().mapToLong(Outcome::refused).sum());
  }

  private static void requireWritten(List<DataFile> files, long told) {
    long written = files.stream().mapToLong(DataFile::recordCount).sum();
    if (written != told) {
      throw new IllegalStateException(told + " rows were to be written, and " + written + " were");
    }
  }

  /** What became of one export. */
  public record Outcome(ExportFile file, FileOutcome outcome) implements Serializable {

    private long stored() {
      return outcome instanceof FileOutcome.FileTally tally ? tally.stored() : 0;
    }

    private long refused() {
      return outcome instanceof FileOutcome.FileTally tally ? tally.refused() : 0;
    }
  }
}
