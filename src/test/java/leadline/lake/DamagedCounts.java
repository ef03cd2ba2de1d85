package leadline.lake;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.iceberg.OverwriteFiles;
import org.apache.iceberg.Table;
import org.apache.iceberg.data.Record;
import org.apache.iceberg.expressions.Expressions;
import org.apache.iceberg.io.CloseableIterable;

/** Falsifies a lake behind the program's back. */
public final class DamagedCounts {

  private DamagedCounts() {}

  /** Takes the first row of a table away. */
  public static void loseRow(Path lake, String namespace, String table) {
    rewrite(lake, namespace, table, rows -> rows.remove(0));
  }

  /** Puts the first row of a table into it a second time. */
  public static void doubleRow(Path lake, String namespace, String table) {
    rewrite(lake, namespace, table, rows -> rows.add(rows.get(0)));
  }

  /** Makes the first batch tell of one more row read and stored of its first file. */
  public static void tellOfOneRowMore(Path lake) {
    rewrite(
        lake,
        LakeTable.RECORDS,
        "batches",
        rows -> {
          Record file = Stored.rows(rows.get(0), "files").get(0);
          file.setField("rows_read", Stored.count(file, "rows_read") + 1);
          file.setField("rows_stored", Stored.count(file, "rows_stored") + 1);
        });
  }

  private interface Change {
    void of(List<Record> rows);
  }

  private static void rewrite(Path path, String namespace, String name, Change change) {
    try (Lake lake = Lake.open(path)) {
      Table table = lake.find(new LakeTable(namespace, name)).orElseThrow();
      List<Record> rows = new ArrayList<>();
      try (CloseableIterable<Record> stored = RowFiles.readAll(table)) {
        stored.forEach(row -> rows.add(row.copy()));
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
      change.of(rows);
      OverwriteFiles overwrite =
          table.newOverwrite().overwriteByRowFilter(Expressions.alwaysTrue());
      RowFiles.write(table, rows.iterator()).forEach(overwrite::addFile);
      overwrite.commit();
    }
  }
}
