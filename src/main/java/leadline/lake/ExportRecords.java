package leadline.lake;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import leadline.fleet.RecordKind;
import leadline.history.Exports;
import org.apache.iceberg.data.Record;

/** What the sources of the batches known at a moment say of their exports. */
public final class ExportRecords {

  private final KnownAt knownAt;
  private final VesselNames names;
  private final Map<String, Snapshot> snapshots = new HashMap<>();

  /** A batch with full snapshots, and what of them could not be read. */
  private record Snapshot(
      Batch batch, Set<RecordKind> unread, List<Exports.RefusedRecord> refused) {

    static Snapshot of(Batch batch) {
      return new Snapshot(batch, new HashSet<>(batch.delivery().unread()), new ArrayList<>());
    }

    void add(Record row, VesselNames names) {
      RecordKind kind = RefusedRows.kind(row);
      RefusedRows.vessel(row)
          .map(names::newest)
          .ifPresentOrElse(
              vessel -> refused.add(new Exports.RefusedRecord(kind, vessel, RefusedRows.key(row))),
              () -> unread.add(kind));
    }
  }

  private ExportRecords(KnownAt knownAt) {
    this.knownAt = knownAt;
    this.names = knownAt.vesselNames();
    for (Batch batch : knownAt.counting()) {
      if (!batch.delivery().source().snapshots().isEmpty()) {
        snapshots.put(batch.id(), Snapshot.of(batch));
      }
    }
  }

  public static Exports of(Lake lake, KnownAt knownAt) {
    ExportRecords records = new ExportRecords(knownAt);
    if (!records.snapshots.isEmpty()) {
      lake.find(LakeTable.REFUSED).ifPresent(table -> RefusedRows.forEachKey(table, records::add));
    }
    return records.exports();
  }

  private void add(Record row) {
    Snapshot snapshot = snapshots.get(RefusedRows.batch(row));
    if (snapshot != null
        && snapshot.batch().delivery().source().snapshots().contains(RefusedRows.kind(row))) {
      snapshot.add(row, names);
    }
  }

  private Exports exports() {
    Map<Long, Exports.Export> byBatch = new HashMap<>();
    for (Batch batch : knownAt.counting()) {
      if (!batch.delivery().source().name().isEmpty()) {
        Snapshot snapshot = snapshots.getOrDefault(batch.id(), Snapshot.of(batch));
        byBatch.put(
            knownAt.place(batch),
            new Exports.Export(
                batch.delivery().source().name(),
                batch.delivery().source().snapshots(),
                snapshot.unread(),
                snapshot.refused()));
      }
    }
    return new Exports(byBatch);
  }
}
