package leadline.intake;

import java.io.IOException;
import java.io.Serializable;
import java.nio.file.Path;
import leadline.fleet.RecordKind;
import leadline.origin.FileDigest;

/**
 * An export found in an inbox, not yet read.
 *
 * @param path below the inbox, with {@code /} between folders
 */
public record InboxFile(RecordKind kind, String path) implements Serializable {

  /** The same file named by its content, for which it is read once. */
  public ExportFile digested(Path inbox) throws IOException {
    return new ExportFile(kind, path, FileDigest.of(inbox.resolve(path)));
  }
}
