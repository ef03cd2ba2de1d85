package leadline.lake;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import leadline.fleet.ItemExchange;
import leadline.fleet.RecordKind;
import org.apache.iceberg.CombinedScanTask;
import org.apache.iceberg.FileScanTask;
import org.apache.iceberg.Schema;
import org.apache.iceberg.SerializableTable;
import org.apache.iceberg.Table;
import org.apache.iceberg.data.Record;
import org.apache.iceberg.io.CloseableIterable;
import org.apache.spark.api.java.JavaPairRDD;
import org.apache.spark.api.java.function.PairFlatMapFunction;
import scala.Tuple2;

/** The records of a fleet, grouped by vessels that exchange items. */
public final class RecordFiles {

  private final Lake lake;
  private final KnownAt knownAt;

  public RecordFiles(Lake lake, KnownAt knownAt) {
    this.lake = lake;
    this.knownAt = knownAt;
  }

  /** Every stored row that was known, packed in blocks, by vessels that exchange items. */
  public JavaPairRDD<String, Iterable<RowBlock>> byPool(ItemExchange exchange, Engine engine) {
    List<Stretch> stretches = new ArrayList<>();
    for (RecordKind kind : RecordKind.values()) {
      stretches.addAll(stretches(kind));
    }
    int slices = engine.slicesFor(stretches.size());
    return engine
        .context()
        .parallelize(stretches, slices)
        .flatMapToPair(new PackByPool(knownAt.placeOfBatch(), knownAt.vesselNames(), exchange))
        .groupByKey(slices);
  }

  private List<Stretch> stretches(RecordKind kind) {
    Table table = lake.table(RecordTable.of(kind), RecordTable.schema(kind));
    Table forTasks = SerializableTable.copyOf(table);
    List<Stretch> stretches = new ArrayList<>();
    try (CloseableIterable<CombinedScanTask> tasks = table.newScan().planTasks()) {
      tasks.forEach(task -> stretches.add(new Stretch(kind, forTasks, task)));
    } catch (IOException e) {
      throw new UncheckedIOException("cannot list the files of " + table.name(), e);
    }
    return stretches;
  }

  /** Files of one table that one task reads. */
  private record Stretch(RecordKind kind, Table table, CombinedScanTask files)
      implements java.io.Serializable {}

  /** Reads a stretch and packs its rows by vessels that exchange items. */
  private record PackByPool(
      Map<String, Long> placeOfBatch, VesselNames names, ItemExchange exchange)
      implements PairFlatMapFunction<Stretch, String, RowBlock> {

    @Override
    public Iterator<Tuple2<String, RowBlock>> call(Stretch stretch) throws IOException {
      Map<String, RowBlock.Writer> blocks = new HashMap<>();
      Schema projection = RecordTable.projection(stretch.table().schema());
      for (FileScanTask file : stretch.files().files()) {
        try (CloseableIterable<Record> rows = RowFiles.read(stretch.table(), file, projection)) {
          rows.forEach(row -> pack(stretch.kind(), row, blocks));
        }
      }
      return blocks.entrySet().stream()
          .map(entry -> new Tuple2<>(entry.getKey(), entry.getValue().finish()))
          .iterator();
    }

    private void pack(RecordKind kind, Record row, Map<String, RowBlock.Writer> blocks) {
      if (placeOfBatch.containsKey(RecordTable.batchOf(kind, row))) {
        String vessel = names.newest(RecordTable.vesselOf(row));
        blocks
            .computeIfAbsent(exchange.poolOf(vessel), pool -> new RowBlock.Writer())
            .add(
                RecordTable.cells(kind, row).ofVessel(vessel),
                RecordTable.arrival(kind, row, placeOfBatch));
      }
    }
  }
}
