package leadline.summary;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import leadline.origin.FileDigest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Three files of two batches, of which seven rows were refused; counted by hand. */
class IntakeTablesTest {

  private static final IntakeFile PLOVER = file(1, "findings_plover.csv", 10, 4);
  private static final IntakeFile CURLEW = file(2, "findings_curlew.csv", 9, 3);
  private static final IntakeFile CLEAN = file(2, "findings_avocet.csv", 5, 0);

  private static final List<RefusedLine> REFUSED =
      List.of(
          refused(PLOVER, 3, "plover", unknown("found", "rusty")),
          refused(PLOVER, 5, "plover", unknown("found", "rusty"), unknown("action", "swapped")),
          refused(PLOVER, 7, "", new RefusedLine.BrokenRule("open-quote", "", Optional.empty())),
          refused(PLOVER, 11, "plover", unknown("found", "Sound")),
          refused(CURLEW, 10, "curlew", unknown("found", "rusty")),
          refused(CURLEW, 2, "curlew", unknown("found", "ok")),
          refused(CURLEW, 4, "", unknown("found", "ok")));

  private static IntakeFile file(long batch, String name, long read, long refused) {
    return file(batch, IntakeStanding.COUNTS, name, read, refused);
  }

  private static IntakeFile file(
      long batch, IntakeStanding standing, String name, long read, long refused) {
    return new IntakeFile(
        batch,
        "B" + batch,
        Instant.parse("2025-01-0" + batch + "T06:00:00Z"),
        standing,
        name,
        FileDigest.of(name.getBytes(java.nio.charset.StandardCharsets.UTF_8)),
        read,
        read - refused,
        refused);
  }

  private static RefusedLine refused(
      IntakeFile file, long line, String vessel, RefusedLine.BrokenRule... rules) {
    return new RefusedLine(
        file,
        line,
        "findings",
        Optional.of(vessel).filter(name -> !name.isEmpty()),
        List.of(rules));
  }

  private static RefusedLine.BrokenRule unknown(String column, String word) {
    return new RefusedLine.BrokenRule("unknown-word", column, Optional.of(word));
  }

  private static Map<TableSpec, List<TableRow>> tables(List<RefusedLine> refused) {
    IntakeTables tables =
        new IntakeTables(Rows.MONTH, Rows.KNOWN_AT, List.of(CURLEW, CLEAN, PLOVER));
    refused.forEach(tables::add);
    return tables.rows();
  }

  private static List<String> lines(TableSpec spec, TableColumn<?>... columns) {
    List<String> lines = new ArrayList<>();
    for (TableRow row : tables(REFUSED).getOrDefault(spec, List.of())) {
      List<String> cells = new ArrayList<>();
      for (TableColumn<?> column : columns) {
        cells.add(row.find(column).map(Object::toString).orElse("-"));
      }
      lines.add(String.join(" | ", cells));
    }
    return lines;
  }

  /** A row that breaks a rule in two columns is one row that breaks it. */
  @Test
  void aFileIsOneRowWithItsRulesTheCommonestFirst() {
    assertEquals(
        List.of(
            "B1 | findings_plover.csv | 10 | 6 | 4 | unknown-word 3, open-quote 1",
            "B2 | findings_avocet.csv | 5 | 5 | 0 | -",
            "B2 | findings_curlew.csv | 9 | 6 | 3 | unknown-word 3"),
        lines(
            IntakeLog.SPEC,
            IntakeLog.BATCH,
            IntakeLog.FILE,
            IntakeLog.ROWS_READ,
            IntakeLog.ROWS_STORED,
            IntakeLog.ROWS_REFUSED,
            IntakeLog.RULES_BROKEN));
  }

  /** As written: {@code Sound} is not {@code sound}. A row without a vessel counts as a row. */
  @Test
  void aWordIsOneRowWithItsFirstAndLastPlace() {
    assertEquals(
        List.of(
            "action | swapped | 1 | 1 | B1 findings_plover.csv 5 | B1 findings_plover.csv 5",
            "found | rusty | 3 | 2 | B1 findings_plover.csv 3 | B2 findings_curlew.csv 10",
            "found | ok | 2 | 1 | B2 findings_curlew.csv 2 | B2 findings_curlew.csv 4",
            "found | Sound | 1 | 1 | B1 findings_plover.csv 11 | B1 findings_plover.csv 11"),
        lines(
                UnmappedWords.SPEC,
                UnmappedWords.COLUMN,
                UnmappedWords.WORD,
                UnmappedWords.ROWS,
                UnmappedWords.VESSELS,
                UnmappedWords.FIRST_BATCH,
                UnmappedWords.FIRST_FILE,
                UnmappedWords.FIRST_LINE,
                UnmappedWords.LAST_BATCH,
                UnmappedWords.LAST_FILE,
                UnmappedWords.LAST_LINE)
            .stream()
            .map(line -> line.replaceAll("(B[12]) \\| (\\S+) \\| ", "$1 $2 "))
            .toList());
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void theOrderOfRefusedRowsChangesNothing(long seed) {
    List<RefusedLine> shuffled = new ArrayList<>(REFUSED);
    Collections.shuffle(shuffled, new Random(seed));

    assertEquals(tables(REFUSED), tables(shuffled));
  }

  /** The log tells of it; its words are to be mapped no more. */
  @Test
  void aFileThatWasTakenBackIsLoggedAndItsWordsAreNotListed() {
    IntakeFile file = file(3, IntakeStanding.WITHDRAWN, "findings_teal.csv", 4, 1);
    IntakeTables tables = new IntakeTables(Rows.MONTH, Rows.KNOWN_AT, List.of(file));
    tables.add(refused(file, 2, "teal", unknown("found", "rusty")));
    TableRow logged = tables.rows().getOrDefault(IntakeLog.SPEC, List.of()).get(0);

    assertEquals(Optional.of("withdrawn"), logged.find(IntakeLog.STANDING));
    assertEquals(Optional.of("unknown-word 1"), logged.find(IntakeLog.RULES_BROKEN));
    assertEquals(List.of(), tables.rows().get(UnmappedWords.SPEC));
  }

  @Test
  void aRowOfAnotherFileIsNotCounted() {
    RefusedLine stray = refused(file(3, "findings.csv", 1, 1), 2, "plover");

    assertThrows(IllegalArgumentException.class, () -> tables(List.of(stray)));
  }
}
