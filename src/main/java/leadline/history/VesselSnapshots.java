package leadline.history;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import leadline.fleet.Cells;
import leadline.fleet.RecordKind;
import leadline.problem.Problem;

/**
 * The full snapshots that mention one vessel. What a source said of a record ends with the first
 * later snapshot of that source, vessel and kind that lacks it; a snapshot of which something could
 * not be read ends nothing.
 */
final class VesselSnapshots {

  private final Exports exports;

  /** The batches of each series of snapshots that have a row of the vessel, read or refused. */
  private final Map<Series, NavigableSet<Long>> mentioning = new HashMap<>();

  private final Set<InBatch<String>> refusedKeys = new HashSet<>();
  private final Set<InBatch<RecordKind>> incomplete = new HashSet<>();
  private final Map<Series, List<ArrivedRow>> unsettled = new TreeMap<>();

  private record Series(String source, RecordKind kind) implements Comparable<Series> {
    @Override
    public int compareTo(Series other) {
      int bySource = source.compareTo(other.source);
      return bySource != 0 ? bySource : kind.compareTo(other.kind);
    }
  }

  private record InBatch<T>(long batch, RecordKind kind, T what) {}

  private VesselSnapshots(Exports exports) {
    this.exports = exports;
  }

  /**
   * @param rows every stored row of the vessel
   */
  static VesselSnapshots of(String vessel, Collection<ArrivedRow> rows, Exports exports) {
    VesselSnapshots snapshots = new VesselSnapshots(exports);
    for (ArrivedRow row : rows) {
      snapshots.mention(row.batch(), row.row().cells().kind());
    }
    exports
        .byBatch()
        .forEach(
            (batch, export) -> {
              export.unread().forEach(kind -> snapshots.incomplete(batch, kind));
              export.refused().stream()
                  .filter(refused -> refused.vessel().equals(vessel))
                  .forEach(refused -> snapshots.refused(batch, refused));
            });
    return snapshots;
  }

  private void mention(long batch, RecordKind kind) {
    exports
        .of(batch)
        .filter(export -> export.snapshots().contains(kind))
        .map(export -> new Series(export.source(), kind))
        .ifPresent(series -> mentioning.computeIfAbsent(series, s -> new TreeSet<>()).add(batch));
  }

  private void incomplete(long batch, RecordKind kind) {
    incomplete.add(new InBatch<>(batch, kind, kind));
  }

  private void refused(long batch, Exports.RefusedRecord refused) {
    mention(batch, refused.kind());
    if (refused.key().isEmpty()) {
      incomplete(batch, refused.kind());
    } else {
      refusedKeys.add(new InBatch<>(batch, refused.kind(), refused.key()));
    }
  }

  /** Of the rows of one record, those that no later snapshot has ended. */
  List<ArrivedRow> standing(List<ArrivedRow> record) {
    if (mentioning.isEmpty()) {
      return record;
    }
    Map<Series, List<ArrivedRow>> bySource = new HashMap<>();
    List<ArrivedRow> standing = new ArrayList<>();
    for (ArrivedRow row : record) {
      exports
          .of(row.batch())
          .map(export -> new Series(export.source(), row.row().cells().kind()))
          .filter(mentioning::containsKey)
          .ifPresentOrElse(
              series -> bySource.computeIfAbsent(series, s -> new ArrayList<>()).add(row),
              () -> standing.add(row));
    }
    bySource.forEach((series, rows) -> standing.addAll(standing(series, rows)));
    return standing;
  }

  private List<ArrivedRow> standing(Series series, List<ArrivedRow> rows) {
    Set<Long> present = rows.stream().map(ArrivedRow::batch).collect(Collectors.toSet());
    Cells cells = rows.get(0).row().cells();
    NavigableSet<Long> lacking =
        mentioning.getOrDefault(series, new TreeSet<>()).stream()
            .filter(batch -> isAbsent(batch, cells, present))
            .collect(Collectors.toCollection(TreeSet::new));
    long ended =
        lacking.descendingSet().stream()
            .filter(batch -> isComplete(batch, cells.kind()))
            .findFirst()
            .orElse(Long.MIN_VALUE);
    List<ArrivedRow> standing = rows.stream().filter(row -> row.batch() > ended).toList();
    if (standing.stream().anyMatch(row -> row.batch() < newest(series))
        && lacking.contains(newest(series))) {
      unsettled.computeIfAbsent(series, s -> new ArrayList<>()).addAll(standing);
    }
    return standing;
  }

  private long newest(Series series) {
    return mentioning.getOrDefault(series, new TreeSet<>()).last();
  }

  private boolean isAbsent(long batch, Cells cells, Set<Long> present) {
    return !present.contains(batch)
        && !refusedKeys.contains(new InBatch<>(batch, cells.kind(), cells.keyBelowVessel()));
  }

  private boolean isComplete(long batch, RecordKind kind) {
    return !incomplete.contains(new InBatch<>(batch, kind, kind));
  }

  /** Whether records were deleted, where the newest snapshot leaves it open; after all records. */
  List<Problem> problems() {
    return unsettled.entrySet().stream()
        .<Problem>map(
            series ->
                UnreadSnapshot.lacking(
                    series.getKey().source(), series.getKey().kind(), series.getValue()))
        .toList();
  }
}
