package leadline.history;

import java.time.Instant;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadline.fleet.Cells;
import leadline.fleet.FindingLayout;
import leadline.fleet.OverhaulLayout;
import leadline.fleet.ReturnLayout;
import leadline.fleet.Status;

/**
 * The versions of one record, decided. Rows that say the same are one version, whose place is its
 * first arrival: an old version sent again never stands again. Where a full snapshot has ended all
 * versions, the record is withdrawn; where it came back, only what came later counts.
 *
 * @param standing the row of the version that stands
 */
record RecordVersions(ArrivedRow standing, Census.Count count) {

  static final Comparator<ArrivedRow> FIRST_TO_STANDING =
      Comparator.comparing(
              RecordVersions::revisedAt, Comparator.comparing(at -> at.orElse(Instant.MIN)))
          .thenComparing(ArrivedRow::arrival);

  /**
   * @param rows all rows of one key; at least one
   * @param notEnded those of them that no snapshot has ended
   */
  static RecordVersions of(List<ArrivedRow> rows, List<ArrivedRow> notEnded) {
    long versions = rows.stream().map(row -> row.row().cells()).distinct().count();
    ArrivedRow standing = last(notEnded).or(() -> last(rows)).orElseThrow();
    long duplicates = rows.size() - versions;
    long superseded = versions - 1;
    return new RecordVersions(
        standing,
        notEnded.isEmpty() || isCancelled(standing)
            ? new Census.Count(0, duplicates, superseded, 1)
            : new Census.Count(1, duplicates, superseded, 0));
  }

  private static Optional<ArrivedRow> last(List<ArrivedRow> rows) {
    Map<Cells, ArrivedRow> versions = new LinkedHashMap<>();
    rows.stream()
        .sorted(Comparator.comparing(ArrivedRow::arrival))
        .forEach(row -> versions.putIfAbsent(row.row().cells(), row));
    return versions.values().stream().max(FIRST_TO_STANDING);
  }

  /** A record that only a return sheet tells of: the row is counted as the sheet's. */
  static RecordVersions returned(ArrivedRow version) {
    return new RecordVersions(version, Census.Count.NONE);
  }

  /** The same stored rows, of which a return sheet made another version. */
  RecordVersions revisedBy(ArrivedRow version) {
    return new RecordVersions(version, isCancelled(version) ? count.allWithdrawn() : count);
  }

  Cells cells() {
    return standing.row().cells();
  }

  boolean isWithdrawn() {
    return count.withdrawn() > 0 || isCancelled(standing);
  }

  private static Optional<Instant> revisedAt(ArrivedRow row) {
    Cells cells = row.row().cells();
    return switch (cells.kind()) {
      case OVERHAULS -> cells.find(OverhaulLayout.REVISED_AT);
      case FINDINGS -> cells.find(FindingLayout.REVISED_AT);
      case RETURNS -> cells.find(ReturnLayout.ANSWERED_ON);
      case MACHINES, HOURS, STOCK, MOVEMENTS -> Optional.empty();
    };
  }

  private static boolean isCancelled(ArrivedRow row) {
    Cells cells = row.row().cells();
    Optional<Status> status =
        switch (cells.kind()) {
          case OVERHAULS -> cells.find(OverhaulLayout.STATUS);
          case FINDINGS -> cells.find(FindingLayout.STATUS);
          case MACHINES, HOURS, STOCK, MOVEMENTS, RETURNS -> Optional.empty();
        };
    return status.filter(Status.CANCELLED::equals).isPresent();
  }
}
