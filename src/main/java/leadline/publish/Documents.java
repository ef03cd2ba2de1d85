package leadline.publish;

import java.io.IOException;
import java.nio.file.Path;

/** What is written for people beside a run's tables. */
@FunctionalInterface
public interface Documents {

  Documents NONE = (issue, folder) -> {};

  /** Adds files to the run's folder, which holds all else by then. */
  void write(Issue issue, Path folder) throws IOException;
}
