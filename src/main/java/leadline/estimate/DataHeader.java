package leadline.estimate;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * The first line of a data file.
 *
 * @param file its name as the user gave it
 * @param columns in the file's order
 */
record DataHeader(String file, List<String> columns) {

  DataHeader {
    columns = List.copyOf(columns);
    Set<String> seen = new TreeSet<>();
    for (String column : columns) {
      if (!seen.add(column)) {
        throw unusable(file, 1, column, "the file has this column twice");
      }
    }
  }

  boolean has(String column) {
    return columns.contains(column);
  }

  /** Columns that split any file into several: {@code set}, {@code group}. */
  void require(Set<String> required, Set<String> optional) {
    for (String column : columns) {
      if (!required.contains(column)
          && !optional.contains(column)
          && !DataFile.SPLITTING.contains(column)) {
        throw unusable(file, 1, column, "this method knows no such column");
      }
    }
    for (String column : new TreeSet<>(required)) {
      if (!has(column)) {
        throw unusable(file, 1, column, "the method needs this column, and the file has none");
      }
    }
  }

  static UnusableData unusable(String file, long line, String column, String why) {
    return new UnusableData(file + ", line " + line + ", column " + column + ": " + why + ".");
  }
}
