package leadline.lake;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.ToLongFunction;
import java.util.stream.Collectors;
import org.apache.iceberg.ExpireSnapshots;
import org.apache.iceberg.Snapshot;
import org.apache.iceberg.Table;
import org.apache.iceberg.data.IcebergGenerics;
import org.apache.iceberg.data.Record;
import org.apache.iceberg.io.CloseableIterable;

/**
 * Upkeep of a lake's tables. After each commit the lake is whole: what a process that died left
 * undone, the next upkeep does. The writer's lock must be held.
 */
public final class Upkeep {

  private final Lake lake;
  private final AgeGuard guard;
  private final Consumer<String> reached;

  /**
   * @param reached is told of each point after which the process may die
   */
  public Upkeep(Lake lake, AgeGuard guard, Consumer<String> reached) {
    this.lake = lake;
    this.guard = guard;
    this.reached = reached;
  }

  /** What became of rows and data files. */
  public record Rewritten(long rowsDropped, long filesBefore, long filesAfter) {}

  /** Takes runs off the list of runs. Their rows stay for those who have met them on it. */
  public void takeOffTheList(List<Run> runs, Engine engine) {
    Set<String> staying = ids(lake.runs().committed());
    staying.removeAll(ids(runs));
    lake.find(LakeTable.RUNS)
        .ifPresent(list -> new Rewrite(LakeTable.RUNS, list, staying).run(engine));
    reached.accept("superseded runs off the list");
  }

  /**
   * Drops the rows of batches that were never committed, and of runs that were not on the list
   * within the guard; gathers small files.
   */
  public Rewritten dropStrayRowsAndGatherSmallFiles(Engine engine) {
    Set<String> batches =
        lake.batches().committed().stream().map(Batch::id).collect(Collectors.toSet());
    Set<String> runs = runsMet();
    Rewrite.Done done = Rewrite.Done.NOTHING;
    for (LakeTable name : lake.tables()) {
      Set<String> standing = name.isOfRecords() ? batches : runs;
      done = done.and(new Rewrite(name, lake.need(name), standing).run(engine));
      reached.accept(name + " rewritten");
    }
    return new Rewritten(done.rowsDropped(), done.filesBefore(), done.filesAfter());
  }

  /** Forgets the snapshots that no reader within the guard has met, and says how many. */
  public long expireSnapshots() {
    return eachTable("snapshots expired", this::expire);
  }

  /** Deletes files beyond the guard that no snapshot refers to, and says how many. */
  public long deleteStrayFiles() {
    return eachTable("stray files deleted", table -> new StrayFiles(table, guard).delete());
  }

  private long eachTable(String point, ToLongFunction<Table> work) {
    long sum = 0;
    for (LakeTable name : lake.tables()) {
      sum += work.applyAsLong(lake.need(name));
      reached.accept(name + " " + point);
    }
    return sum;
  }

  /** Their files go with the other stray files: there is one place where files are deleted. */
  private long expire(Table table) {
    Set<Long> met = guard.met(table).stream().map(Snapshot::snapshotId).collect(Collectors.toSet());
    Set<Long> expired = new HashSet<>();
    table.snapshots().forEach(snapshot -> expired.add(snapshot.snapshotId()));
    expired.removeAll(met);
    if (!expired.isEmpty()) {
      ExpireSnapshots expiry =
          table
              .expireSnapshots()
              .cleanupLevel(ExpireSnapshots.CleanupLevel.NONE)
              .expireOlderThan(0);
      expired.forEach(expiry::expireSnapshotId);
      expiry.commit();
    }
    return expired.size();
  }

  /** The runs that a reader within the guard may have met on the list. */
  private Set<String> runsMet() {
    Set<String> runs = ids(lake.runs().committed());
    lake.find(LakeTable.RUNS)
        .ifPresent(table -> guard.met(table).forEach(list -> runs.addAll(listed(table, list))));
    return runs;
  }

  private static Set<String> listed(Table table, Snapshot list) {
    String run = LakeTable.RUNS.owner();
    try (CloseableIterable<Record> rows =
        IcebergGenerics.read(table).select(run).useSnapshot(list.snapshotId()).build()) {
      return Owned.stream(rows).map(row -> Stored.text(row, run)).collect(Collectors.toSet());
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + table.name(), e);
    }
  }

  private static Set<String> ids(List<Run> runs) {
    return runs.stream().map(Run::id).collect(Collectors.toCollection(HashSet::new));
  }
}
