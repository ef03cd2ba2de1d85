package leadline.golden;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The published tables of the golden fleet, through the whole pipeline, against the table written
 * by hand; its limits were computed outside the project (Garwood and Clopper-Pearson by the
 * quantiles of SciPy).
 */
class GoldenTablesTest {

  /** Limits of spring_survival by bootstrap. */
  private static final Set<String> DRAWN_AT_RANDOM =
      Set.of("broken_by_lo95", "broken_by_hi95", "limits_by");

  @ParameterizedTest
  @CsvSource({
    "component_rates, endpoint",
    "overhaul_intervals, clock",
    "part_findings, part",
    "spring_breakage, part hours_band",
    "findings_by_hours, part hours_band found",
    "part_life, part distribution",
    "spring_survival, part method age_h"
  })
  void everyRowByHandComesOutAndNoOther(String table, String ownKeys) {
    List<String> keys =
        java.util.stream.Stream.concat(
                java.util.stream.Stream.of("window", "level", "stratum", "component"),
                java.util.stream.Stream.of(ownKeys.split(" ")))
            .toList();
    Map<String, Map<String, String>> expected = byKey(Expected.rows(table), keys);
    Set<String> components =
        Expected.rows(table).stream().map(row -> row.get("component")).collect(Collectors.toSet());
    Map<String, Map<String, String>> actual =
        byKey(
            published(table).stream()
                .filter(row -> components.contains(row.get("component")))
                .toList(),
            keys);

    assertFalse(expected.isEmpty());
    assertEquals(new TreeSet<>(expected.keySet()), new TreeSet<>(actual.keySet()));
    expected.forEach((key, row) -> assertRow(table + " " + key, row, actual.get(key)));
  }

  @ParameterizedTest
  @CsvSource({
    "due_list, vessel machine component position",
    "fleet_month, vessel",
    "hours_reconciliation, vessel machine at record"
  })
  void everyRowAboutAVesselComesOutInItsPlace(String table, String keys) {
    Map<String, Map<String, String>> expected =
        byKey(Expected.rows(table), List.of(keys.split(" ")));
    Map<String, Map<String, String>> actual = byKey(published(table), List.of(keys.split(" ")));

    assertEquals(List.copyOf(expected.keySet()), List.copyOf(actual.keySet()));
    expected.forEach((key, row) -> assertRow(table + " " + key, row, actual.get(key)));
  }

  /** Batches are named by their inboxes, which the program does not know. */
  @ParameterizedTest
  @CsvSource({"intake_log", "unmapped_words"})
  void everyRowAboutTheExportsComesOutInItsPlace(String table) {
    List<Map<String, String>> expected = new java.util.ArrayList<>(Expected.rows(table));
    expected.forEach(row -> row.keySet().removeAll(Set.of("known_at", "why")));
    List<Map<String, String>> actual = new java.util.ArrayList<>(published(table));
    Map<String, String> inboxes = inboxOfBatch();
    for (Map<String, String> row : actual) {
      row.keySet().removeAll(Set.of("known_at", "committed_at", "digest"));
      row.replaceAll((column, text) -> inboxes.getOrDefault(text, text));
    }
    assertEquals(lines(expected), lines(actual));
  }

  /** First asked is the moment of a batch, which the hand names by its inbox. */
  @Test
  void everyQuestionIsAskedOnceAndNamesItsRow() {
    Map<String, String> inboxes = new LinkedHashMap<>();
    for (Map<String, String> row : published("intake_log")) {
      inboxes.put(row.get("committed_at"), inboxOfBatch().get(row.get("batch")));
    }
    Map<String, Map<String, String>> expected =
        byKey(Expected.rows("vessel_queries"), List.of("vessel", "kind", "record"));
    Map<String, Map<String, String>> actual =
        byKey(published("vessel_queries"), List.of("vessel", "kind", "record"));
    assertEquals(new TreeSet<>(expected.keySet()), new TreeSet<>(actual.keySet()));
    for (Map.Entry<String, Map<String, String>> asked : actual.entrySet()) {
      Map<String, String> hand = new LinkedHashMap<>(expected.get(asked.getKey()));
      Map<String, String> row = new LinkedHashMap<>(asked.getValue());
      hand.keySet().removeAll(Set.of("known_at", "why"));
      row.keySet().removeAll(Set.of("known_at", "question", "settled_by"));
      row.replace("first_asked", inboxes.getOrDefault(row.get("first_asked"), "no batch"));
      row.replace("evidence", row.get("evidence").replaceFirst(".* \\((.*)\\)$", "$1"));
      assertEquals(hand, row, asked.getKey());
    }
  }

  /** The golden inboxes are taken in one after the other. */
  private static Map<String, String> inboxOfBatch() {
    Map<String, String> inboxes = new LinkedHashMap<>();
    for (Map<String, String> row : published("intake_log")) {
      inboxes.computeIfAbsent(row.get("batch"), batch -> GoldenFleet.INBOXES.get(inboxes.size()));
    }
    assertEquals(3, inboxes.size());
    return inboxes;
  }

  private static String lines(List<Map<String, String>> rows) {
    return rows.stream().map(Map::toString).collect(Collectors.joining("\n"));
  }

  private static void assertRow(
      String name, Map<String, String> expected, Map<String, String> actual) {
    Set<String> columns = new TreeSet<>(expected.keySet());
    columns.removeAll(Set.of("known_at", "why"));
    Set<String> published = new TreeSet<>(actual.keySet());
    published.remove("known_at");
    published.removeAll(DRAWN_AT_RANDOM);
    assertEquals(columns, published, name);
    for (String column : columns) {
      assertTrue(
          Expected.same(expected.get(column), actual.get(column)),
          () ->
              name
                  + ": "
                  + column
                  + " should be "
                  + expected.get(column)
                  + " and is "
                  + actual.get(column)
                  + "; "
                  + expected.get("why"));
    }
  }

  @Test
  void theColumnsStandInTheOrderOfTheHand() {
    for (String table :
        List.of(
            "component_rates",
            "overhaul_intervals",
            "part_findings",
            "spring_breakage",
            "findings_by_hours",
            "part_life",
            "spring_survival",
            "due_list",
            "fleet_month",
            "hours_reconciliation")) {
      List<String> hand = new java.util.ArrayList<>(Expected.rows(table).get(0).keySet());
      hand.remove("why");
      List<String> published = new java.util.ArrayList<>(published(table).get(0).keySet());
      published.removeAll(DRAWN_AT_RANDOM);
      assertEquals(hand, published);
    }
  }

  private static List<Map<String, String>> published(String table) {
    return Expected.read(GoldenMonth.folder().resolve("tables/" + table + ".csv"));
  }

  private static Map<String, Map<String, String>> byKey(
      List<Map<String, String>> rows, List<String> keys) {
    Map<String, Map<String, String>> byKey = new LinkedHashMap<>();
    for (Map<String, String> row : rows) {
      String key = keys.stream().map(row::get).collect(Collectors.joining(" "));
      assertTrue(byKey.put(key, row) == null, () -> "two rows " + key);
    }
    return byKey;
  }
}
