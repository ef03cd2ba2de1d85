package leadline.golden;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every published file of the golden fleet, read by DuckDB, and what must hold in any of them. */
class PublishedFilesTest {

  private static Path month;
  private static DuckSession duck;

  @BeforeAll
  static void readTheFiles() throws IOException, SQLException {
    month = GoldenMonth.folder();
    duck = DuckSession.open();
    duck.viewTables(month);
    duck.name("month", month);
    duck.script("published_files.sql");
    duck.script("laws.sql");
  }

  @AfterAll
  static void close() throws SQLException {
    duck.close();
  }

  static List<String> tables() throws SQLException {
    return duck.rows("SELECT resource.name FROM resources ORDER BY 1");
  }

  /** The tables of figures, each of which ends in a verdict; the others list single things. */
  static List<String> tablesOfFigures() throws SQLException {
    return duck.rows("SELECT \"table\" FROM fields WHERE name = 'verdict' ORDER BY 1");
  }

  @Test
  void theHeadlineTablesAreThere() throws SQLException {
    assertTrue(
        tables()
            .containsAll(
                List.of(
                    "component_rates", "overhaul_intervals", "part_findings", "spring_breakage")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"files_in_package", "files_in_manifest"})
  void exactlyTheFilesThereAreListedWithTheirSizesAndDigests(String list)
      throws IOException, SQLException {
    List<String> there = duck.rows("FROM files_there ORDER BY ALL");
    assertEquals(DuckSession.files(month, "").size(), there.size());
    assertEquals(2 * tables().size(), there.size());
    assertEquals(there, duck.rows("FROM " + list + " ORDER BY ALL"));
  }

  @ParameterizedTest
  @MethodSource("tables")
  void csvAndParquetHoldTheSameRowsTypesAndAbsences(String table) throws SQLException {
    List<String> parquet = duck.rows("FROM " + table);
    assertEquals(
        duck.number(
            "SELECT published.rows FROM manifest_tables WHERE published.name = '" + table + "'"),
        parquet.size());
    assertFalse(parquet.isEmpty());
    assertEquals(
        String.join("\n", parquet),
        String.join("\n", duck.rows("SELECT " + unguarded(table) + " FROM " + csv(table))));
  }

  /** Texts that a spreadsheet would take for a formula bear an apostrophe in the CSV. */
  private static String unguarded(String table) throws SQLException {
    return String.join(
        ", ",
        duck.rows(
            """
            SELECT CASE type WHEN 'VARCHAR' THEN 'regexp_replace("' || name || '", ''^''''([=+@''''-])'', ''\\1'')'
              ELSE '"' || name || '"' END
            FROM fields WHERE "table" = '%s' ORDER BY position
            """
                .formatted(table)));
  }

  /** The CSV read as what the data package says it holds: another type would not be readable. */
  private static String csv(String table) throws SQLException {
    String types =
        duck.rows(
                """
                SELECT '{' || string_agg('''' || name || ''': ''' || type || '''', ', ' ORDER BY position) || '}'
                FROM fields WHERE "table" = '%s'
                """
                    .formatted(table))
            .get(0);
    return "read_csv(%s, header = true, delim = ',', quote = '\"', escape = '\"', columns = %s)"
        .formatted(DuckSession.quoted(month.resolve("tables/" + table + ".csv")), types);
  }

  @ParameterizedTest
  @MethodSource("tables")
  void parquetHasTheColumnsAndTypesOfThePackage(String table) throws SQLException {
    assertEquals(
        duck.rows(
            "SELECT name, type FROM fields WHERE \"table\" = '%s' ORDER BY position"
                .formatted(table)),
        duck.rows("SELECT column_name, column_type FROM (DESCRIBE " + table + ")"));
  }

  @ParameterizedTest
  @MethodSource("tables")
  void requiredValuesAreNeverAbsent(String table) throws SQLException {
    List<String> required = columns(table, "required");
    assertFalse(required.isEmpty());
    for (String column : required) {
      assertHolds(table, column + " IS NOT NULL");
    }
  }

  @ParameterizedTest
  @MethodSource("tables")
  void aKeyNamesOneRow(String table) throws SQLException {
    List<String> key = columns(table, "position_in_key IS NOT NULL");
    assertFalse(key.isEmpty());
    assertEquals(
        List.of(),
        duck.rows(
            "SELECT %1$s FROM %2$s GROUP BY %1$s HAVING count(*) > 1"
                .formatted(String.join(", ", key), table)));
  }

  @ParameterizedTest
  @MethodSource("tables")
  void everyRowSaysOfWhatMonthItIsAndWhatWasKnown(String table) throws SQLException {
    assertHolds(table, "month = '2024-12'");
    assertHolds(table, "known_at = (SELECT max(known_at) FROM component_rates)");
  }

  @Test
  void allButTheListsOfSingleThingsAreTablesOfFigures() throws SQLException {
    List<String> others = new ArrayList<>(tables());
    others.removeAll(tablesOfFigures());
    assertEquals(
        List.of(
            "due_list",
            "fleet_month",
            "hours_reconciliation",
            "intake_log",
            "unmapped_words",
            "vessel_queries"),
        others);
  }

  @ParameterizedTest
  @MethodSource("tablesOfFigures")
  void everyRowSaysWhatItIsAbout(String table) throws SQLException {
    assertHolds(table, "\"window\" IN ('since-start', '12-months', 'month')");
    assertHolds(table, "level IN ('fleet', 'model', 'vessel')");
    assertHolds(table, "(level = 'fleet') = (stratum = 'all')");
    assertHolds(
        table, "verdict IN ('ok', 'too-few', 'insufficient', 'selective-opening', 'wrong-clock')");
  }

  @ParameterizedTest
  @MethodSource("tables")
  void numbersAreNeverNegativeAndSharesAtMostOne(String table) throws SQLException {
    List<String> numbers =
        columns(
            table, "type IN ('BIGINT', 'DOUBLE') AND name <> 'remaining_h'"); // of an overdue one
    assertFalse(numbers.isEmpty());
    for (String column : numbers) {
      assertHolds(
          table,
          "coalesce(" + column + ", 0) >= 0 AND isfinite(coalesce(" + column + ", 0)::DOUBLE)");
      if (column.contains("share")) {
        assertHolds(table, "coalesce(" + column + ", 0) <= 1");
      }
    }
  }

  @ParameterizedTest
  @MethodSource("tablesOfFigures")
  void limitsLieAroundTheirEstimate(String table) throws SQLException {
    List<String> lowers = columns(table, "name LIKE '%\\_lo95' ESCAPE '\\'");
    assertFalse(lowers.isEmpty());
    for (String lower : lowers) {
      String upper = lower.replace("_lo95", "_hi95");
      String estimate = lower.replace("_lo95", "");
      if (duck.number("SELECT count(*) FROM " + table + " WHERE verdict = 'ok'") > 0) {
        assertTrue(duck.number("SELECT count(" + lower + ") FROM " + table) > 0, lower);
      }
      assertHolds(table, "coalesce(%s <= %s, true)".formatted(lower, estimate));
      assertHolds(table, "coalesce(%s <= %s, true)".formatted(estimate, upper));
      if (table.equals("component_rates") || table.contains("_findings")) { // exact: always both
        assertHolds(table, "(%s IS NULL) = (%s IS NULL)".formatted(lower, upper));
        assertHolds(table, "(%s IS NULL) = (%s IS NULL)".formatted(lower, estimate));
      }
    }
  }

  @ParameterizedTest
  @MethodSource("tablesOfFigures")
  void noMoreIsInspectedThanCouldBeAndNoMoreHappensThanCould(String table) throws SQLException {
    assertHolds(table, "inspected <= eligible");
    assertHolds(table, "events <= eligible");
    assertHolds(table, "(repaired_hours_share IS NULL) = (coalesce(exposure_h, 0) = 0)");
  }

  /** The laws of single tables and between tables, each of which must have met rows. */
  @Test
  void everyLawHoldsForEveryRow() throws SQLException {
    assertEquals(45, duck.number("SELECT count(DISTINCT law) FROM laws"));
    assertEquals(
        "",
        String.join(
            "\n",
            duck.rows(
                "SELECT law, \"row\" FROM laws WHERE holds IS NOT TRUE ORDER BY ALL LIMIT 20")));
  }

  private static List<String> columns(String table, String which) throws SQLException {
    return duck
        .rows(
            "SELECT name FROM fields WHERE \"table\" = '%s' AND (%s) ORDER BY position"
                .formatted(table, which))
        .stream()
        .map(column -> '"' + column + '"')
        .toList();
  }

  private static void assertHolds(String table, String law) throws SQLException {
    assertEquals(
        List.of(),
        duck.rows("FROM %s WHERE (%s) IS NOT TRUE LIMIT 5".formatted(table, law)),
        () -> table + ": " + law);
  }
}
