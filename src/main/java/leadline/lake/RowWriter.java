package leadline.lake;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import leadline.fleet.Column;
import leadline.fleet.RecordKind;
import leadline.fleet.StoredRow;
import leadline.intake.RefusedRow;
import leadline.intake.RowSink;
import org.apache.iceberg.DataFile;
import org.apache.iceberg.Table;

/**
 * Writes the rows of one kind of export to Parquet files, sorted so that a vessel's lie together.
 */
final class RowWriter implements RowSink {

  /** Rows sorted in memory at once. */
  static final int ROWS_PER_FILE = 200_000;

  private final Comparator<StoredRow> order;
  private final String batch;
  private final Table records;
  private final Table refusals;
  private final List<StoredRow> rows = new ArrayList<>();
  private final List<RefusedRow> refused = new ArrayList<>();
  private final List<DataFile> recordFiles = new ArrayList<>();
  private final List<DataFile> refusedFiles = new ArrayList<>();

  RowWriter(RecordKind kind, String batch, Table records, Table refusals) {
    this.order = order(kind);
    this.batch = batch;
    this.records = records;
    this.refusals = refusals;
  }

  private static Comparator<StoredRow> order(RecordKind kind) {
    return kind.layout().sortedBy().stream()
        .map(RowWriter::by)
        .reduce(Comparator::thenComparing)
        .orElseThrow(() -> new IllegalStateException(kind.word() + " has no order"));
  }

  @SuppressWarnings("unchecked") // every cell type's value is comparable
  private static Comparator<StoredRow> by(Column<?> column) {
    return Comparator.comparing(row -> (Comparable<Object>) row.cells().need(column));
  }

  @Override
  public void stored(StoredRow row) {
    rows.add(row);
    if (rows.size() == ROWS_PER_FILE) {
      flushRows();
    }
  }

  @Override
  public void refused(RefusedRow row) {
    refused.add(row);
    if (refused.size() == ROWS_PER_FILE) {
      flushRefused();
    }
  }

  List<DataFile> recordFiles() {
    flushRows();
    return recordFiles;
  }

  List<DataFile> refusedFiles() {
    flushRefused();
    return refusedFiles;
  }

  private void flushRows() {
    rows.sort(order);
    recordFiles.addAll(
        RowFiles.write(
            records,
            rows.stream().map(row -> RecordTable.encode(records.schema(), row, batch)).iterator()));
    rows.clear();
  }

  private void flushRefused() {
    refusedFiles.addAll(
        RowFiles.write(
            refusals,
            refused.stream()
                .map(row -> RefusedRows.encode(refusals.schema(), row, batch))
                .iterator()));
    refused.clear();
  }
}
