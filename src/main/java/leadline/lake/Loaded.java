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

  /** What became of one export. */
  public record Outcome(ExportFile file, FileOutcome outcome) implements Serializable {}
}
