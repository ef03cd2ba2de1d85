package leadline.lake;

import java.io.Serializable;
import leadline.origin.FileDigest;

/** An export file that a batch loaded: rows read are rows stored and rows refused. */
public record LoadedFile(
    String name,
    FileDigest digest,
    long rowsRead,
    long rowsStored,
    long rowsRefused,
    long cellsTrimmed)
    implements Serializable {

  public LoadedFile {
    if (rowsRead != rowsStored + rowsRefused) {
      throw new IllegalStateException(
          name
              + ": "
              + rowsRead
              + " rows read, "
              + rowsStored
              + " stored, "
              + rowsRefused
              + " refused");
    }
  }
}
