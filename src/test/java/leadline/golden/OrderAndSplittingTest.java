package leadline.golden;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import leadline.summary.PublishedTables;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The order of rows, and the order and number of files, change no published digit. */
@Tag("long")
class OrderAndSplittingTest {

  /** The tables that tell files and lines apart. */
  private static final Set<String> ABOUT_FILES = Set.of("intake_log.csv", "unmapped_words.csv");

  /** Of these tables the file and line of each row is passed over. */
  private static final Set<String> NAMES_ROWS =
      Set.of("hours_reconciliation.csv", "vessel_queries.csv");

  @TempDir static Path folder;

  private static Map<String, String> asExported;

  @BeforeAll
  static void runAsExported() throws IOException {
    new Pipeline(folder.resolve("lake")).golden(folder.resolve("out"));
    asExported = tables(folder.resolve("out"));
    assertEquals(PublishedTables.all().size() - ABOUT_FILES.size(), asExported.size());
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void rowsInAnyOrder(long seed) throws IOException {
    Random random = new Random(seed);
    assertSameTables("shuffled" + seed, (name, rows) -> Map.of(name, shuffled(rows, random)));
  }

  @Test
  void filesSplitAndRenamed() throws IOException {
    assertSameTables(
        "split",
        (name, rows) -> {
          String kind = name.split("[_.]", 2)[0];
          int half = rows.size() / 2;
          return Map.of(
              kind + "_zz.split." + name, rows.subList(0, half),
              kind + "_aa.split." + name, rows.subList(half, rows.size()));
        });
  }

  @FunctionalInterface
  private interface Rewriting {
    /** The files, each without its header, that take the place of one file. */
    Map<String, List<String>> of(String name, List<String> rows);
  }

  private static void assertSameTables(String name, Rewriting rewriting) throws IOException {
    Pipeline pipeline = new Pipeline(folder.resolve(name + " lake"));
    for (String inbox : GoldenFleet.INBOXES) {
      Path rewritten = Files.createDirectories(folder.resolve(name).resolve(inbox));
      try (Stream<Path> files = Files.list(GoldenFleet.EXPORTS.resolve(inbox))) {
        for (Path file : files.toList()) {
          rewrite(file, rewritten, rewriting);
        }
      }
      pipeline.ingest(rewritten);
    }
    pipeline.compute();
    Path out = folder.resolve(name + " out");
    pipeline.publish(out);
    assertEquals(asExported, tables(out));
  }

  private static void rewrite(Path file, Path folder, Rewriting rewriting) throws IOException {
    List<String> lines = Files.readString(file).lines().filter(line -> !line.isBlank()).toList();
    Map<String, List<String>> files =
        rewriting.of(file.getFileName().toString(), lines.subList(1, lines.size()));
    for (Map.Entry<String, List<String>> rewritten : files.entrySet()) {
      List<String> withHeader = new ArrayList<>(rewritten.getValue());
      withHeader.add(0, lines.get(0));
      Files.write(folder.resolve(rewritten.getKey()), withHeader, StandardCharsets.UTF_8);
    }
  }

  private static List<String> shuffled(List<String> rows, Random random) {
    List<String> shuffled = new ArrayList<>(rows);
    Collections.shuffle(shuffled, random);
    return shuffled;
  }

  /**
   * The text of every table of figures, but for the time at which the last batch happened to be
   * committed.
   */
  static Map<String, String> tables(Path out) throws IOException {
    Map<String, String> tables = new TreeMap<>();
    try (Stream<Path> files = Files.list(out.resolve("2024-12/tables"))) {
      for (Path file : files.filter(OrderAndSplittingTest::isOfFigures).toList()) {
        String name = file.getFileName().toString();
        String text =
            Files.readString(file).replaceAll("2025-02-01T06:00:00(\\.[0-9]+)?Z", "KNOWN");
        tables.put(name, NAMES_ROWS.contains(name) ? withoutRows(text) : text);
      }
    }
    return tables;
  }

  private static String withoutRows(String text) {
    return text.lines()
        .map(line -> line.replaceAll("[\\w.-]+\\.csv(,| line )\\d+", "ROW"))
        .sorted()
        .collect(Collectors.joining("\n"));
  }

  private static boolean isOfFigures(Path file) {
    String name = file.getFileName().toString();
    return name.endsWith(".csv") && !ABOUT_FILES.contains(name);
  }
}
