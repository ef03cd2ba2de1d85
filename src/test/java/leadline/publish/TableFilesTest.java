package leadline.publish;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import leadline.summary.TableRow;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Both files are read back by DuckDB, which shares no code with the writers. */
class TableFilesTest {

  private static final String CSV_TYPES =
      "{'component': 'VARCHAR', 'known_at': 'TIMESTAMPTZ', 'events': 'BIGINT',"
          + " 'rate_per_million_h': 'DOUBLE', 'remark': 'VARCHAR'}";

  @TempDir Path temporary;
  private Path folder = Path.of("");

  @BeforeEach
  void folderWithBlanks() throws IOException {
    folder = Files.createDirectory(temporary.resolve("the fleet's tables"));
  }

  @Test
  void parquetHoldsTheValuesAndTheirAbsence() throws IOException, SQLException {
    TableFiles.write(SampleTable.table(), folder);
    assertEquals(expectedRows(), asInstants(DuckDb.rows("FROM " + quoted("sample_rates.parquet"))));
  }

  @Test
  void csvHoldsTheSameValuesOnceTheGuardIsDropped() throws IOException, SQLException {
    TableFiles.write(SampleTable.table(), folder);
    String readCsv =
        "FROM read_csv(%s, header = true, delim = ',', quote = '\"', escape = '\"', columns = %s)"
            .formatted(quoted("sample_rates.csv"), CSV_TYPES);
    List<List<@Nullable Object>> read = asInstants(DuckDb.rows(readCsv));
    for (List<@Nullable Object> row : read) {
      if (row.get(4) instanceof String text && text.startsWith("'")) {
        row.set(4, text.substring(1));
      }
    }
    assertEquals(expectedRows(), read);
  }

  @Test
  void parquetStatesTypesNeedsAndMeaning() throws IOException, SQLException {
    TableFiles.write(SampleTable.table(), folder);
    String schema =
        "SELECT name, type, repetition_type, logical_type FROM parquet_schema(%s) OFFSET 1"
            .formatted(quoted("sample_rates.parquet"));
    String micros =
        "TimestampType(isAdjustedToUTC=1, unit=TimeUnit(MILLIS=<null>,"
            + " MICROS=MicroSeconds(), NANOS=<null>))";
    assertEquals(
        List.of(
            List.of("component", "BYTE_ARRAY", "REQUIRED", "StringType()"),
            List.of("known_at", "INT64", "REQUIRED", micros),
            Collections.unmodifiableList(asList("events", "INT64", "REQUIRED", null)),
            Collections.unmodifiableList(asList("rate_per_million_h", "DOUBLE", "OPTIONAL", null)),
            List.of("remark", "BYTE_ARRAY", "OPTIONAL", "StringType()")),
        DuckDb.rows(schema));
    assertEquals(
        List.of(List.of(SampleTable.SPEC.meaning())),
        DuckDb.rows(
            "SELECT decode(value) FROM parquet_kv_metadata(%s) WHERE decode(key) = '%s'"
                .formatted(quoted("sample_rates.parquet"), "leadline.meaning")));
  }

  @Test
  void theSameRowsGiveTheSameBytes() throws IOException {
    TableFiles.write(SampleTable.table(), folder);
    Path again = Files.createDirectory(temporary.resolve("again"));
    TableFiles files = TableFiles.write(SampleTable.table(), again);
    for (FileFacts file : List.of(files.csv(), files.parquet())) {
      assertArrayEquals(
          Files.readAllBytes(folder.resolve(file.path())),
          Files.readAllBytes(again.resolve(file.path())),
          file.path());
    }
  }

  @Test
  void aTableWithoutRowsIsStillATable() throws IOException, SQLException {
    TableFiles.write(new PublishedTable(SampleTable.SPEC, List.of()), folder);
    assertEquals(
        "component,known_at,events,rate_per_million_h,remark\n",
        Files.readString(folder.resolve("tables/sample_rates.csv")));
    assertTrue(DuckDb.rows("FROM " + quoted("sample_rates.parquet")).isEmpty());
  }

  /** Lines as RFC 4180 has them, written down by hand. */
  @Test
  void csvIsWrittenAsTheStandardHasIt() throws IOException {
    TableFiles.write(SampleTable.table(), folder);
    String csv =
        Files.readString(folder.resolve("tables/sample_rates.csv"), StandardCharsets.UTF_8);
    assertTrue(
        csv.startsWith(
            """
            component,known_at,events,rate_per_million_h,remark
            component-00,2025-01-10T12:00:00Z,0,0,plain
            component-01,2025-01-10T12:00:00.123456Z,1,0.1,"a, b; c"
            component-02,2025-01-10T12:00:00Z,2,0.3333333333333333,"said ""broken""\"
            component-03,2025-01-10T12:00:00.123456Z,3,212,"two
            lines"
            """),
        csv);
    assertTrue(csv.contains(",'=1+1\n"), csv);
    assertTrue(csv.contains(",\"'-45 bar, \"\"low\"\"\"\n"), csv);
    assertTrue(csv.contains(",10,-17.25,"), csv);
    assertTrue(csv.contains("component-98,2025-01-10T12:00:00.123456Z,9223372036854775807,,\n"));
  }

  private String quoted(String name) {
    return "'" + folder.resolve("tables").resolve(name).toString().replace("'", "''") + "'";
  }

  private static List<List<@Nullable Object>> expectedRows() {
    List<List<@Nullable Object>> expected = new ArrayList<>();
    for (TableRow row : SampleTable.rows()) {
      expected.add(
          asList(
              row.need(SampleTable.COMPONENT),
              row.need(SampleTable.KNOWN_AT),
              row.need(SampleTable.EVENTS),
              row.find(SampleTable.RATE).orElse(null),
              row.find(SampleTable.REMARK).orElse(null)));
    }
    return expected;
  }

  private static List<@Nullable Object> asList(@Nullable Object... values) {
    List<@Nullable Object> list = new ArrayList<>();
    Collections.addAll(list, values);
    return list;
  }

  private static List<List<@Nullable Object>> asInstants(List<List<@Nullable Object>> rows) {
    for (List<@Nullable Object> row : rows) {
      row.replaceAll(value -> value instanceof OffsetDateTime time ? time.toInstant() : value);
    }
    return rows;
  }
}
