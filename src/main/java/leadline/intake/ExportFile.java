package leadline.intake;

import java.io.Serializable;
import leadline.fleet.RecordKind;
import leadline.origin.FileDigest;
import leadline.origin.Origin;

/**
 * One export: what it holds, and where its rows say they came from.
 *
 * @param path below the inbox, with {@code /} between folders
 */
public record ExportFile(RecordKind kind, String path, FileDigest digest) implements Serializable {

  Origin line(long number) {
    return new Origin(path, digest, number);
  }
}
