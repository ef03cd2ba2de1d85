package leadline.estimate;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * The failures of a unit in the time in which it was observed, in the file's unit of time.
 *
 * @param name the unit's
 * @param start when observation began, 0 or more
 * @param end when it ended, more than {@code start}
 * @param failures in time order, each after {@code start} and not after {@code end}
 */
record RecurrentUnit(String name, double start, double end, List<Double> failures) {

  private static final Set<String> COLUMNS = Set.of("unit", "time", "event");
  private static final Set<String> OPTIONAL = Set.of("start");

  RecurrentUnit {
    failures = failures.stream().sorted().toList();
  }

  /** In order of first appearance. */
  static List<RecurrentUnit> of(DataFile file) {
    file.header().require(COLUMNS, OPTIONAL);
    return file.by("unit").entrySet().stream()
        .map(unit -> of(unit.getKey(), unit.getValue()))
        .toList();
  }

  private static RecurrentUnit of(String name, DataFile file) {
    DataRow last = end(name, file);
    double start = start(file.rows().get(0));
    double end = last.positive("time");
    List<Double> failures = new ArrayList<>();
    for (DataRow row : file.rows()) {
      double time = row.positive("time");
      if (start(row) != start) {
        throw row.impossible("start", "differs from the unit's other rows: " + start(row));
      }
      if (time <= start || time > end) {
        throw row.impossible("time", "outside the time in which the unit was observed: " + time);
      }
      if (!row.equals(last)) {
        failures.add(time);
      }
    }
    return new RecurrentUnit(name, start, end, failures);
  }

  private static double start(DataRow row) {
    return row.states("start") ? row.notNegative("start") : 0;
  }

  private static DataRow end(String name, DataFile file) {
    List<DataRow> ends = file.rows().stream().filter(row -> !isFailure(row)).toList();
    if (ends.isEmpty()) {
      throw file.infeasible("event", "unit " + name + " has no end of observation, event 0");
    }
    if (ends.size() > 1) {
      throw ends.get(1).impossible("event", "a second end of observation for unit " + name);
    }
    return ends.get(0);
  }

  private static boolean isFailure(DataRow row) {
    return switch (row.word("event")) {
      case "0" -> false;
      case "1" -> true;
      default -> throw row.impossible("event", "neither 0 nor 1: " + row.word("event"));
    };
  }
}
