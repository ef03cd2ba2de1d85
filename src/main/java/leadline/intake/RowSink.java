package leadline.intake;

import java.io.IOException;
import leadline.fleet.StoredRow;

/** Where the rows of a file go, in the order of the file. */
public interface RowSink {

  void stored(StoredRow row) throws IOException;

  void refused(RefusedRow row) throws IOException;
}
