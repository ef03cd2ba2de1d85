package leadline.sample;

import java.util.ArrayList;
import java.util.List;

/** The errors planted in one vessel's records, in the order of planting. */
final class ErrorList {

  private final String vessel;
  private final List<PlantedError> errors = new ArrayList<>();

  ErrorList(String vessel) {
    this.vessel = vessel;
  }

  void add(RecordError kind, String file, String record, String part) {
    add(kind, file, record, part, "");
  }

  /**
   * @param truth what ought to stand there
   */
  void add(RecordError kind, String file, String record, String part, String truth) {
    errors.add(new PlantedError(vessel, file, record, part, kind, truth));
  }

  List<PlantedError> errors() {
    return List.copyOf(errors);
  }
}
