package leadline.lake;

import java.io.Serializable;
import java.util.List;
import java.util.stream.Stream;
import org.apache.iceberg.DataFile;

/** Files of rebuilt vessels, written and not yet committed. */
public record VesselFiles(List<DataFile> lives, List<DataFile> problems) implements Serializable {

  public static final VesselFiles NONE = new VesselFiles(List.of(), List.of());

  public VesselFiles {
    lives = List.copyOf(lives);
    problems = List.copyOf(problems);
  }

  public VesselFiles and(VesselFiles other) {
    return new VesselFiles(
        Stream.concat(lives.stream(), other.lives.stream()).toList(),
        Stream.concat(problems.stream(), other.problems.stream()).toList());
  }
}
