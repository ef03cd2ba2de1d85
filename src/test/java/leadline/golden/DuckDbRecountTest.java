package leadline.golden;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The published counts and hours of the golden fleet against a recount in SQL, straight from the
 * raw exports: the scripts {@code recount_1_rows.sql} to {@code recount_4_overhauls.sql} in {@code
 * src/test/resources/golden} share nothing with the project but the rules.
 */
class DuckDbRecountTest {

  private static DuckSession duck;

  @BeforeAll
  static void recount() throws IOException, SQLException {
    Path month = GoldenMonth.folder();
    duck = DuckSession.open();
    duck.viewTables(month);
    duck.name("month", month);
    duck.name("exports", GoldenFleet.EXPORTS);
    duck.script("recount_1_rows.sql");
    duck.script("recount_2_records.sql");
    duck.script("recount_3_hours.sql");
    duck.script("recount_4_overhauls.sql");
  }

  @AfterAll
  static void close() throws SQLException {
    duck.close();
  }

  /**
   * Six strata (the fleet, two models, three vessels) and three windows for the three components of
   * a main engine, their two endpoints, their nineteen parts, their four springs.
   */
  @ParameterizedTest
  @CsvSource({
    "recounted_events, component_rates, 108",
    "recounted_parts, part_findings, 342",
    "recounted_springs, spring_breakage WHERE hours_band = 'all', 72",
    "recounted_conditions, findings_by_hours WHERE hours_band = 'all', 129",
    "recounted_exposure, component_rates, 54",
    "recounted_exposure, part_findings, 54",
    "recounted_exposure, spring_breakage WHERE hours_band = 'all', 54",
    "recounted_exposure_since_start, overhaul_intervals, 18",
  })
  void theRecountEqualsWhatIsPublished(String recounted, String published, int rows)
      throws SQLException {
    String columns = duck.columnsOf(recounted);
    List<String> expected = duck.rows("FROM " + recounted + " ORDER BY ALL");
    assertEquals(rows, expected.size());
    assertEquals(
        lines(expected),
        lines(duck.rows("SELECT DISTINCT " + columns + " FROM " + published + " ORDER BY ALL")));
  }

  /** Named in the table written by hand, {@code component_rates.csv}. */
  @Test
  void theRecountFindsTheUnplannedRemovalsThatTheHandNames() throws SQLException {
    assertEquals(
        List.of(
            "breakdown | MG-17",
            "breakdown | OS-10",
            "breakdown | TP-10",
            "condition | MG-10",
            "condition | OS-05",
            "condition | TP-12"),
        duck.rows(
            "SELECT reason, overhaul FROM observed_overhauls WHERE component = 'fuel-injector'"
                + " AND \"window\" = 'since-start' AND reason <> 'planned' ORDER BY ALL"));
  }

  /** What the published exposure cannot show: hours in the midst of a window. */
  @Test
  void theRecountHasTheHoursOfTheHandAtEveryMoment() throws SQLException {
    List<String> recounted =
        duck.rows(
            "SELECT vessel, machine, strftime(moment, '%Y-%m-%dT%H:%M:%SZ'), hours / 10"
                + " FROM hours_at");
    List<Map<String, String>> hand = Expected.rows("machine_hours");
    assertEquals(50, hand.size());
    for (Map<String, String> row : hand) {
      String hours =
          String.join(
              " | ", row.get("vessel"), row.get("machine"), row.get("at"), row.get("hours"));
      assertTrue(recounted.contains(hours), row::toString);
    }
  }

  /** Sixteen files hold machines, readings, overhauls and findings and are not skipped. */
  @Test
  void theManifestTellsOfEachFileWhatTheRecountReadStoredAndRefused() throws SQLException {
    List<String> expected =
        duck.rows("SELECT name, digest, read, stored, refused FROM recounted_files ORDER BY ALL");
    assertEquals(16, expected.size());
    assertEquals(
        lines(expected),
        lines(
            duck.rows(
                """
                SELECT file.name, file.digest, file.read, file.stored, file.refused
                FROM (
                  SELECT unnest(batch.files) AS file
                  FROM (
                    SELECT unnest(inputs) AS batch
                    FROM read_json(getvariable('month') || '/run.json')))
                WHERE regexp_matches(file.name, '^(machines|hours|overhauls|findings)')
                ORDER BY ALL
                """)));
  }

  @ParameterizedTest
  @CsvSource({"machines", "hours", "overhauls", "findings"})
  void theManifestTellsWhatBecameOfTheStoredRows(String kind) throws SQLException {
    List<String> expected =
        duck.rows(
            "SELECT current, duplicate, superseded, withdrawn FROM recounted_census"
                + " WHERE kind = '%s'".formatted(kind));
    assertEquals(1, expected.size());
    assertEquals(
        expected,
        duck.rows(
            """
            SELECT records.%1$s.current, records.%1$s.duplicate, records.%1$s.superseded,
              records.%1$s.withdrawn
            FROM read_json(getvariable('month') || '/run.json')
            """
                .formatted(kind)));
  }

  private static String lines(List<String> rows) {
    return String.join("\n", rows);
  }
}
