package leadline.lake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.apache.iceberg.Schema;
import org.apache.iceberg.Table;
import org.apache.iceberg.data.GenericRecord;
import org.apache.iceberg.data.Record;
import org.apache.iceberg.types.Types;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LakeTest {

  private static final Duration AT_ONCE = Duration.ZERO;

  @TempDir Path folder;

  @Test
  void aNewerFormatIsRefused() throws IOException {
    Path lake = folder.resolve("lake");
    Lake.openOrCreate(lake).close();
    Files.writeString(lake.resolve("format"), "2\n");
    LakeException refusal = assertThrows(LakeException.class, () -> Lake.open(lake));
    assertTrue(message(refusal).contains("format 2"), refusal::toString);
  }

  @Test
  void aFolderOfOtherThingsIsNoLake() throws IOException {
    Files.writeString(folder.resolve("letters.txt"), "dear owner");
    assertThrows(LakeException.class, () -> Lake.openOrCreate(folder));
    assertThrows(LakeException.class, () -> Lake.open(folder));
  }

  @Test
  void aSecondWriterWaitsIsToldAndGivesUp() {
    try (Lake lake = Lake.openOrCreate(folder.resolve("lake"));
        Lake same = Lake.openOrCreate(folder.resolve("lake"))) {
      List<String> told = new ArrayList<>();
      String outcome =
          lake.writing(
              AT_ONCE,
              told::add,
              () -> {
                assertThrows(
                    LakeInUseException.class,
                    () -> same.writing(Duration.ofMillis(300), told::add, () -> "written"));
                return "first";
              });
      assertEquals("first", outcome);
      assertEquals(1, told.size(), told::toString);
      assertEquals("now", same.writing(AT_ONCE, told::add, () -> "now"));
    }
  }

  @Test
  void theLockIsFreeAfterWorkThatFailed() {
    try (Lake lake = Lake.openOrCreate(folder.resolve("lake"))) {
      assertThrows(
          IllegalStateException.class,
          () ->
              lake.writing(
                  AT_ONCE,
                  words -> {},
                  () -> {
                    throw new IllegalStateException("as if it died");
                  }));
      assertEquals("free", lake.writing(AT_ONCE, words -> {}, () -> "free"));
    }
  }

  /** Names that a URI would write otherwise. */
  @ParameterizedTest
  @ValueSource(strings = {"a lake", "50% full", "100%20", "no. #1", "whose?", "m\u00f6we"})
  void theTablesLieInTheLakesOwnFolder(String name) throws IOException {
    Path path = folder.resolve(name);
    Schema schema = new Schemas().text("vessel", "the vessel").build();
    try (Lake lake = Lake.openOrCreate(path)) {
      Table table = lake.table(new LakeTable(LakeTable.RECORDS, "moorings"), schema);
      Record row = GenericRecord.create(table.schema());
      row.setField("vessel", "plover");
      lake.append(table, RowFiles.write(table, List.of(row).iterator()));
    }

    try (Stream<Path> inLake = Files.walk(path);
        Stream<Path> beside = Files.list(folder)) {
      assertTrue(inLake.anyMatch(file -> file.toString().endsWith(".parquet")));
      assertEquals(List.of(path), beside.toList());
    }
  }

  /** So that a lake of an older program takes in the rows of this one. */
  @Test
  void aTableGainsTheColumnsThatAnOlderProgramDidNotWrite() {
    LakeTable name = new LakeTable(LakeTable.RECORDS, "moorings");
    Schemas then = new Schemas().text("vessel", "the vessel");
    Schema older = then.rows("lines", new Schemas().text("rope", "the rope"), "lines").build();
    Schema newer =
        new Schemas()
            .text("vessel", "the vessel")
            .rows(
                "lines",
                new Schemas()
                    .text("rope", "the rope")
                    .optional("length_m", Types.DoubleType.get(), "its length"),
                "lines")
            .optional("berth", Types.StringType.get(), "the berth")
            .build();
    try (Lake lake = Lake.openOrCreate(folder.resolve("lake"))) {
      Table table = lake.table(name, older);
      lake.append(table, RowFiles.write(table, List.of(mooring(table.schema())).iterator()));
      Table grown = lake.table(name, newer);
      Record now = mooring(grown.schema());
      now.setField("berth", "4");
      Stored.rows(now, "lines").get(0).setField("length_m", 55.0);
      lake.append(grown, RowFiles.write(grown, List.of(now).iterator()));

      List<String> berths =
          Stored.list(
              lake.find(name).orElseThrow(),
              row ->
                  row.getField("berth")
                      + " "
                      + Stored.rows(row, "lines").get(0).getField("length_m"),
              Comparator.<String>naturalOrder());
      assertEquals(List.of("4 55.0", "null null"), berths);
    }
  }

  private static Record mooring(Schema schema) {
    Record line =
        GenericRecord.create(schema.findType("lines").asListType().elementType().asStructType());
    line.setField("rope", "bow");
    Record row = GenericRecord.create(schema);
    row.setField("vessel", "plover");
    row.setField("lines", List.of(line));
    return row;
  }

  private static String message(Throwable fault) {
    return String.valueOf(fault.getMessage());
  }
}
