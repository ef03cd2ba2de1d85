package leadline.history;

import java.io.Serializable;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import leadline.fleet.RecordKind;

/**
 * What the sources of batches say of their exports.
 *
 * @param byBatch by the batch's place in the order of arrival; none where no source is named
 */
public record Exports(Map<Long, Export> byBatch) implements Serializable {

  /** Every batch holds changes, of no source in particular. */
  public static final Exports UNNAMED = new Exports(Map.of());

  public Exports {
    byBatch = new TreeMap<>(byBatch);
  }

  Optional<Export> of(long batch) {
    return Optional.ofNullable(byBatch.get(batch));
  }

  /**
   * The exports of one batch.
   *
   * @param snapshots the kinds of which they hold every record that the source has
   * @param unread the kinds of which a file, or a row of an unknown vessel, could not be read
   * @param refused the refused rows of snapshots that name their vessel
   */
  public record Export(
      String source, Set<RecordKind> snapshots, Set<RecordKind> unread, List<RefusedRecord> refused)
      implements Serializable {

    public Export {
      snapshots = Set.copyOf(snapshots);
      unread = Set.copyOf(unread);
      refused = List.copyOf(refused);
    }
  }

  /**
   * A row that was refused.
   *
   * @param key the record's key below its vessel, as {@link leadline.fleet.Cells#keyBelowVessel};
   *     empty where it could not be read
   */
  public record RefusedRecord(RecordKind kind, String vessel, String key) implements Serializable {}
}
