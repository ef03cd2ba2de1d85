package leadline.packaging;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The demo as a whole: by the launcher, from a copy of the project at a path with blanks, and
 * submitted to a Spark that is there already.
 */
class DemoIT {

  /**
   * Libraries that a download of Spark does not hold, by its own list, {@code
   * dev/deps/spark-deps-hadoop-3-hive-2.3} of its source.
   */
  private static final List<String> NOT_IN_SPARK =
      List.of(
          "error_prone_annotations-",
          "httpclient5-",
          "httpcore5-",
          "jspecify-",
          "parquet-variant-");

  private static final List<String> TABLES =
      List.of("component_rates", "overhaul_intervals", "part_findings", "spring_breakage");

  @TempDir private static Path folder;

  private static Finished launched = new Finished(-1, List.of(), List.of());
  private static Finished submitted = launched;

  @BeforeAll
  static void run() throws IOException {
    ProjectCopy project = ProjectCopy.built(folder.resolve("the whole project"));
    launched =
        Program.launcher(
                project.launcher(), "run", project.home().resolve("jobs/demo.json").toString())
            .in(Files.createDirectory(folder.resolve("else where")))
            .where("LEADLINE_DEMO", demo("launched").toString())
            .run();
    submitted =
        submit(Path.of("jobs/demo.json"))
            .where("LEADLINE_DEMO", demo("submitted").toString())
            .run();
  }

  private static Path demo(String how) {
    return folder.resolve("by one " + how);
  }

  /**
   * Local, on the class path of a Spark that knows nothing of this program, and cut into more tasks
   * than the launcher's run has on two cores.
   */
  private static Program submit(Path jobFile) {
    Set<String> bundled = Build.classes(Build.JAR_FOR_SPARK);
    Stream<Path> spark =
        Build.libraries().stream()
            .filter(library -> !Build.holdsAll(bundled, library))
            .filter(
                library ->
                    NOT_IN_SPARK.stream().noneMatch(library.getFileName().toString()::startsWith));
    return Program.java(
            "-XX:+UseSerialGC",
            "-XX:TieredStopAtLevel=1",
            "-cp",
            Build.classPath(spark),
            "org.apache.spark.deploy.SparkSubmit",
            "--master",
            "local[5]",
            "--class",
            "leadline.cli.Main",
            Build.JAR_FOR_SPARK.toString(),
            "run",
            jobFile.toString())
        .in(Build.HOME);
  }

  @Test
  void theLauncherEndsWell() {
    assertEquals(0, launched.exit(), launched::toString);
  }

  @Test
  void theLastLineTellsASchedulerOfEveryStep() throws IOException {
    JsonNode line = new ObjectMapper().readTree(launched.lastLine());

    assertEquals(
        List.of("ingest", "compute", "publish"), line.get("steps").findValuesAsText("step"));
  }

  @Test
  void theMonthIsPublished() {
    Path published = demo("launched").resolve("published");

    assertAll(
        () -> assertTrue(Files.isSymbolicLink(published.resolve("latest"))),
        () ->
            assertAll(
                Stream.of("datapackage.json", "run.json")
                    .map(name -> published.resolve("2024-12").resolve(name))
                    .map(file -> () -> assertTrue(Files.size(file) > 0, file::toString))),
        () ->
            assertAll(
                TABLES.stream()
                    .flatMap(name -> Stream.of(name + ".csv", name + ".parquet"))
                    .map(name -> published.resolve("latest/tables").resolve(name))
                    .map(file -> () -> assertTrue(Files.size(file) > 0, file::toString))));
  }

  @Test
  void theEngineIsNotHeard() {
    List<String> chatter =
        launched.err().stream()
            .filter(line -> line.matches("(?i).*(spark|log4j|slf4j|hadoop|iceberg|\\bwarn).*"))
            .toList();

    assertEquals(List.of(), chatter);
    assertTrue(
        launched.err().stream().anyMatch(line -> line.startsWith("findings_amberwigeon.csv")),
        "the refused rows are told there");
  }

  @Test
  void anExistingSparkPublishesTheSameFromAnotherNumberOfPartitions() throws IOException {
    assertEquals(0, submitted.exit(), submitted::toString);
    for (String table : TABLES) {
      assertEquals(rows(demo("launched"), table), rows(demo("submitted"), table), table);
    }
  }

  @Test
  void anExistingSparkHandsOnTheExitCode() {
    Finished run = submit(folder.resolve("absent.json")).run();

    assertEquals(2, run.exit(), run::toString);
  }

  /** All cells but the time of the run. */
  private static List<Map<String, String>> rows(Path demo, String table) throws IOException {
    Path file = demo.resolve("published/2024-12/tables").resolve(table + ".csv");
    try (CsvReader<NamedCsvRecord> csv = CsvReader.builder().ofNamedCsvRecord(file)) {
      List<Map<String, String>> rows =
          csv.stream()
              .<Map<String, String>>map(row -> new TreeMap<>(row.getFieldsAsMap()))
              .toList();
      rows.forEach(row -> row.remove("known_at"));
      assertTrue(rows.size() > 1, file::toString);
      return rows;
    }
  }
}
