package leadline.lake;

import java.time.Instant;
import java.util.SortedMap;

/**
 * One compute that was committed.
 *
 * @param month such as {@code 2024-12}
 * @param knownAt the batches it used: those committed up to then
 * @param settingsDigest what settings it used, to tell like runs from unlike ones
 * @param census current, duplicate, superseded and withdrawn rows, by kind of record and state
 * @param problems how many problems of each kind the history met
 * @param rows how many rows of each table it wrote
 * @param milliseconds how long each step took
 */
public record Run(
    String id,
    String month,
    Instant knownAt,
    String settingsDigest,
    String programVersion,
    Instant committedAt,
    SortedMap<String, Long> census,
    SortedMap<String, Long> problems,
    SortedMap<String, Long> rows,
    SortedMap<String, Long> milliseconds) {

  Run committedNotBefore(Instant earliest) {
    return committedAt.isBefore(earliest)
        ? new Run(
            id,
            month,
            knownAt,
            settingsDigest,
            programVersion,
            earliest,
            census,
            problems,
            rows,
            milliseconds)
        : this;
  }
}
