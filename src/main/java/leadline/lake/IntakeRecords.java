package leadline.lake;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadline.origin.FileDigest;
import leadline.quantity.ReportMonth;
import leadline.summary.IntakeFile;
import leadline.summary.IntakeStanding;
import leadline.summary.IntakeTables;
import org.apache.iceberg.data.Record;

/** What the batches known at a moment took in, and what they refused. */
public final class IntakeRecords {

  private final Lake lake;
  private final KnownAt knownAt;
  private final Map<FileOfBatch, IntakeFile> files = new HashMap<>();

  private record FileOfBatch(String batch, FileDigest digest) {}

  public IntakeRecords(Lake lake, KnownAt knownAt) {
    this.lake = lake;
    this.knownAt = knownAt;
    for (Batch batch : knownAt.batches()) {
      long place = knownAt.place(batch);
      IntakeStanding standing = knownAt.standing(batch);
      for (LoadedFile file : batch.files()) {
        files.put(new FileOfBatch(batch.id(), file.digest()), of(batch, place, standing, file));
      }
    }
  }

  private static IntakeFile of(Batch batch, long place, IntakeStanding standing, LoadedFile file) {
    return new IntakeFile(
        place,
        batch.id(),
        batch.committedAt(),
        standing,
        file.name(),
        file.digest(),
        file.rowsRead(),
        file.rowsStored(),
        file.rowsRefused());
  }

  /** The tables of the month. Rows of batches and files that were not known are passed over. */
  public IntakeTables tables(ReportMonth month) {
    VesselNames names = knownAt.vesselNames();
    IntakeTables tables = new IntakeTables(month, knownAt.at(), List.copyOf(files.values()));
    lake.find(LakeTable.REFUSED)
        .ifPresent(
            table ->
                RefusedRows.forEach(
                    table,
                    row ->
                        file(row)
                            .map(file -> RefusedRows.decode(row, file, names))
                            .ifPresent(tables::add)));
    return tables;
  }

  private Optional<IntakeFile> file(Record refused) {
    return Optional.ofNullable(
        files.get(new FileOfBatch(RefusedRows.batch(refused), RefusedRows.digest(refused))));
  }
}
