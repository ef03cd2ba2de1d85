package leadline.lake;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import leadline.fleet.RecordKind;

/** Counts the stored and refused rows of every file of committed batches. */
final class BatchRecount {

  private final Lake lake;
  private final List<Batch> batches;
  private final Counts<RowsOfFile> counts = new Counts<>();

  private record RowsOfFile(LakeTable table, String batch, String file) {}

  BatchRecount(Lake lake, List<Batch> batches) {
    this.lake = lake;
    this.batches = batches;
  }

  List<Disagreement> disagreements() {
    for (Batch batch : batches) {
      batch.files().forEach(file -> tell(batch, file));
    }
    for (RecordKind kind : RecordKind.values()) {
      find(RecordTable.of(kind));
    }
    find(LakeTable.REFUSED);
    List<Disagreement> disagreements = new ArrayList<>();
    counts.forEachUnlike(
        (rows, told, found) ->
            disagreements.add(
                new Disagreement.RowsOfFile(rows.batch(), rows.file(), rows.table(), told, found)));
    return disagreements;
  }

  private void tell(Batch batch, LoadedFile file) {
    LakeTable records =
        RecordKind.ofFileName(String.valueOf(Path.of(file.name()).getFileName()))
            .map(RecordTable::of)
            .orElseThrow(
                () -> new LakeException("The lake holds a file of no known kind: " + file.name()));
    counts.tell(new RowsOfFile(records, batch.id(), file.name()), file.rowsStored());
    counts.tell(new RowsOfFile(LakeTable.REFUSED, batch.id(), file.name()), file.rowsRefused());
  }

  /** Rows of batches that were never committed are nobody's. */
  private void find(LakeTable name) {
    Set<String> committed = batches.stream().map(Batch::id).collect(Collectors.toSet());
    lake.find(name)
        .ifPresent(
            table ->
                Stored.forEach(
                    table,
                    List.of(RecordTable.BATCH, RecordTable.FILE),
                    row -> {
                      String batch = Stored.text(row, RecordTable.BATCH);
                      if (committed.contains(batch)) {
                        counts.find(
                            new RowsOfFile(name, batch, Stored.text(row, RecordTable.FILE)));
                      }
                    }));
  }
}
