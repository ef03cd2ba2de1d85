package leadline.lake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Stream;
import leadline.fleet.Cells;
import leadline.fleet.HoursLayout;
import leadline.fleet.ReadingKind;
import leadline.fleet.RecordKind;
import leadline.fleet.SourcedRow;
import leadline.fleet.StoredRow;
import leadline.origin.FileDigest;
import leadline.origin.Origin;
import leadline.quantity.RunningHours;
import org.apache.iceberg.FileScanTask;
import org.apache.iceberg.Table;
import org.apache.iceberg.data.Record;
import org.apache.iceberg.io.CloseableIterable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class UpkeepTest {

  private static final AgeGuard WEEK = new AgeGuard(Clock.systemUTC(), Duration.ofDays(7));
  private static final AgeGuard A_WEEK_LATER =
      new AgeGuard(
          Clock.offset(Clock.systemUTC(), Duration.ofDays(7).plusHours(1)), Duration.ofDays(7));

  @TempDir Path folder;

  private Engine engine;
  private Lake lake;
  private Table hours;

  @BeforeEach
  void aLakeOfSmallFiles() {
    RunningEngine.start();
    engine = new Engine();
    lake = Lake.openOrCreate(folder.resolve("lake"));
    hours = lake.table(RecordTable.of(RecordKind.HOURS), RecordTable.schema(RecordKind.HOURS));
    batch("one", "plover", "dunlin");
    lake.batches().commit("one", Instant.EPOCH, "0", List.of(), Delivery.UNTOLD);
    batch("lost", "plover");
    batch("two", "avocet", "plover");
    lake.batches().commit("two", Instant.EPOCH, "0", List.of(), Delivery.UNTOLD);
  }

  @AfterEach
  void close() {
    lake.close();
    engine.close();
  }

  @Test
  void smallFilesBecomeOneSortedByVesselWithEveryRowOfACommittedBatch() throws IOException {
    List<String> before = rowsOfCommittedBatches();
    Upkeep.Rewritten done = upkeep(WEEK).dropStrayRowsAndGatherSmallFiles(engine);

    assertEquals(new Upkeep.Rewritten(1, 3 + 2, 1 + 1), done);
    assertEquals(1, planned().size());
    assertEquals(before, rowsOfCommittedBatches());
    assertEquals(
        List.of("avocet", "dunlin", "plover", "plover"),
        read(planned()).stream().map(RecordTable::vesselOf).toList());
    assertEquals(
        new Upkeep.Rewritten(0, 0, 0), upkeep(WEEK).dropStrayRowsAndGatherSmallFiles(engine));
  }

  @Test
  void aReaderThatPlannedBeforeReadsOn() throws IOException {
    List<FileScanTask> planned = planned();
    List<String> before = texts(read(planned));
    whole(WEEK);

    assertEquals(before, texts(read(planned)));
    assertEquals(5, before.size());
  }

  @Test
  void beyondTheGuardOldSnapshotsAndTheirFilesGo() throws IOException {
    List<FileScanTask> planned = planned();
    List<String> before = rowsOfCommittedBatches();
    whole(A_WEEK_LATER);

    for (FileScanTask file : planned) {
      assertFalse(Files.exists(Path.of(URI.create(file.file().location()))));
    }
    assertEquals(1, snapshots());
    assertEquals(before, rowsOfCommittedBatches());
  }

  @Test
  void theSnapshotThatWasCurrentWhenTheGuardBeginsStays() throws InterruptedException {
    Thread.sleep(5);
    AgeGuard begunNow =
        new AgeGuard(Clock.fixed(Instant.now(), Clock.systemUTC().getZone()), Duration.ZERO);
    Thread.sleep(5);
    batch("three", "ruff");
    batch("four", "ruff");

    assertEquals(2 + 1, upkeep(begunNow).expireSnapshots());
    assertEquals(1 + 2, snapshots());
  }

  @Test
  void filesThatNothingRefersToGoOnceTheyAreOld() throws IOException {
    Path data = folder.resolve("lake/tables/records/hours/data");
    Path young = Files.writeString(data.resolve("young.parquet"), "written by a task that died");
    Path old = Files.writeString(data.resolve("old.parquet"), "written by a task that died");
    Files.setLastModifiedTime(old, FileTime.from(Instant.now().minus(Duration.ofDays(8))));

    assertEquals(1, upkeep(WEEK).deleteStrayFiles());
    assertTrue(Files.exists(young));
    assertFalse(Files.exists(old));
    assertEquals(5, read(planned()).size());
  }

  @Test
  void nothingIsDeletedFromATableThatHasLostAFile() throws IOException {
    Path data = folder.resolve("lake/tables/records/hours/data");
    Path stray = Files.writeString(data.resolve("stray.parquet"), "written by a task that died");
    Path lost = Path.of(URI.create(planned().get(0).file().location()));
    Files.delete(lost);

    LakeException loss =
        assertThrows(LakeException.class, () -> upkeep(A_WEEK_LATER).deleteStrayFiles());
    assertTrue(String.valueOf(loss.getMessage()).contains(lost.toString()), loss::toString);
    assertTrue(Files.exists(stray));
  }

  @Test
  void aRunOffTheListIsReadByThoseWhoMetItOnTheListUntilTheGuardEnds() throws IOException {
    run("older");
    run("newer");
    Run older = lake.runs().committed().get(0);
    assertEquals("older", older.id());

    upkeep(WEEK).takeOffTheList(List.of(older), engine);
    assertEquals(List.of("newer"), lake.runs().committed().stream().map(Run::id).toList());
    whole(WEEK);
    assertEquals(List.of("newer", "older"), runsWithProblems());
    whole(A_WEEK_LATER);
    assertEquals(List.of("newer"), runsWithProblems());
  }

  private Upkeep upkeep(AgeGuard guard) {
    return new Upkeep(lake, guard, point -> {});
  }

  private void whole(AgeGuard guard) {
    Upkeep upkeep = upkeep(guard);
    upkeep.dropStrayRowsAndGatherSmallFiles(engine);
    upkeep.expireSnapshots();
    upkeep.deleteStrayFiles();
  }

  /** Appends a reading of each vessel, in a file of its own. */
  private void batch(String batch, String... vessels) {
    RowWriter writer = new RowWriter(RecordKind.HOURS, batch, hours, hours);
    for (String vessel : vessels) {
      writer.stored(reading(vessel));
    }
    lake.append(lake.need(RecordTable.of(RecordKind.HOURS)), writer.recordFiles());
  }

  private static StoredRow reading(String vessel) {
    TreeMap<String, String> extras = new TreeMap<>();
    extras.put("noted_by", vessel + "'s second engineer");
    return new StoredRow(
        new SourcedRow(
            Cells.of(RecordKind.HOURS)
                .with(HoursLayout.VESSEL, vessel)
                .with(HoursLayout.MACHINE, "ME")
                .with(HoursLayout.READ_AT, Instant.parse("2024-01-31T12:00:00Z"))
                .with(HoursLayout.HOURS, RunningHours.ofTenths(10_005))
                .with(HoursLayout.KIND, ReadingKind.TOTAL)
                .build(),
            new Origin("hours.csv", FileDigest.of(new byte[] {1}), 2)),
        extras,
        vessel + ",ME");
  }

  private void run(String run) {
    Table problems = lake.table(LakeTable.PROBLEMS, Problems.SCHEMA);
    Record row = org.apache.iceberg.data.GenericRecord.create(problems.schema());
    row.setField("run", run);
    for (String column :
        List.of("vessel", "kind", "record", "sentence", "from_file", "from_digest")) {
      row.setField(column, column);
    }
    row.setField("from_line", 2L);
    lake.append(problems, RowFiles.write(problems, List.of(row).iterator()));
    TreeMap<String, Long> none = new TreeMap<>();
    lake.runs()
        .commit(
            new Run(
                run,
                "2024-12",
                Instant.EPOCH,
                "settings",
                "0",
                Instant.EPOCH.plusSeconds(run.equals("older") ? 1 : 2),
                none,
                none,
                none,
                none));
  }

  private List<String> runsWithProblems() throws IOException {
    try (CloseableIterable<Record> rows = RowFiles.readAll(lake.need(LakeTable.PROBLEMS))) {
      return Owned.stream(rows).map(row -> Stored.text(row, "run")).sorted().toList();
    }
  }

  private List<FileScanTask> planned() throws IOException {
    List<FileScanTask> planned = new ArrayList<>();
    try (CloseableIterable<FileScanTask> files =
        lake.need(RecordTable.of(RecordKind.HOURS)).newScan().planFiles()) {
      files.forEach(planned::add);
    }
    return planned;
  }

  private List<Record> read(List<FileScanTask> files) throws IOException {
    List<Record> rows = new ArrayList<>();
    for (FileScanTask file : files) {
      try (CloseableIterable<Record> stored = RowFiles.rows(hours, file)) {
        stored.forEach(rows::add);
      }
    }
    return rows;
  }

  private static List<String> texts(List<Record> rows) {
    return rows.stream().map(Record::toString).sorted().toList();
  }

  private List<String> rowsOfCommittedBatches() throws IOException {
    Stream<Record> rows = read(planned()).stream();
    return texts(
        rows.filter(row -> !RecordTable.batchOf(RecordKind.HOURS, row).equals("lost")).toList());
  }

  private long snapshots() {
    List<Long> ids = new ArrayList<>();
    lake.need(RecordTable.of(RecordKind.HOURS))
        .snapshots()
        .forEach(snapshot -> ids.add(snapshot.snapshotId()));
    return ids.size();
  }
}
