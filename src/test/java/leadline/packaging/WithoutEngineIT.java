package leadline.packaging;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What needs no engine loads no class of it: Spark and its kin are not there at all. */
class WithoutEngineIT {

  private static final List<String> ENGINE =
      List.of("spark-", "hadoop-", "iceberg-", "parquet-", "scala-");

  @TempDir private static Path folder;

  private static String classPath = "";

  /** The jar stands apart from its libraries, so that its manifest brings none. */
  @BeforeAll
  static void leaveTheEngineOut() throws IOException {
    List<Path> left =
        Build.libraries().stream().filter(library -> !isEngine(library.getFileName())).toList();
    for (String kind : ENGINE) {
      assertTrue(
          Build.libraries().stream()
              .anyMatch(library -> library.getFileName().toString().startsWith(kind)),
          "no library's name begins with " + kind);
    }
    Path jar = Files.copy(Build.JAR, folder.resolve("leadline.jar"));
    classPath = Build.classPath(Stream.concat(Stream.of(jar), left.stream()));
  }

  private static boolean isEngine(Path name) {
    return name.toString().contains("_2.13")
        || ENGINE.stream().anyMatch(name.toString()::startsWith);
  }

  private static Finished leadline(String... arguments) {
    return Program.java(
            Stream.concat(
                    Stream.of(
                        "-Dleadline.home=" + Build.HOME, "-cp", classPath, "leadline.cli.Main"),
                    Stream.of(arguments))
                .toArray(String[]::new))
        .in(Build.HOME)
        .run();
  }

  @Test
  void help() {
    Finished help = leadline("--help");

    assertEquals(0, help.exit(), help::toString);
    assertTrue(help.out().stream().anyMatch(line -> line.contains("COMMAND")), help::toString);
  }

  @Test
  void version() {
    Finished version = leadline("--version");

    assertEquals(0, version.exit(), version::toString);
    assertTrue(version.lastLine().matches("leadline \\d+\\.\\d+\\.\\d+.*"), version::toString);
  }

  @Test
  void checkOfAJobFile() {
    Finished check = leadline("check", "jobs/demo.json");

    assertAll(
        () -> assertEquals(0, check.exit(), check::toString),
        () -> assertTrue(check.lastLine().startsWith("jobs/demo.json: "), check::toString),
        () -> assertEquals(List.of(), check.err()));
  }

  @Test
  void checkOfAnInbox() {
    Finished check = leadline("check", "--inbox", "sample-data/golden/1-first-exports");

    assertAll(
        () -> assertEquals(0, check.exit(), check::toString),
        () -> assertEquals(List.of(), check.err()),
        () ->
            assertTrue(
                check.out().stream().anyMatch(line -> line.startsWith("hours_marrowgull.csv: ")),
                check::toString));
  }

  @Test
  void estimateOfLives() throws IOException {
    Path lives =
        Files.writeString(
            folder.resolve("lives.csv"), "lower,upper,entry,weight\n4000,4000,,1\n9000,,,3\n");
    Finished estimate = leadline("estimate", "fit", lives.toString(), "--fixed-shapes", "2");

    assertAll(
        () -> assertEquals(0, estimate.exit(), estimate::toString),
        () -> assertEquals(List.of(), estimate.err()),
        () ->
            assertTrue(
                estimate.out().stream().anyMatch(line -> line.contains("weibull.b10_lr")),
                estimate::toString));
  }

  /** The reverse: a command that needs the engine cannot run, so it is truly missing above. */
  @Test
  void ingestCannotRun() {
    Finished ingest =
        leadline(
            "ingest",
            "--inbox",
            "sample-data/golden/2-later-exports",
            "--lake",
            folder.resolve("lake").toString());

    assertFalse(ingest.exit() == 0, ingest::toString);
    assertTrue(
        ingest.err().stream().anyMatch(line -> line.contains("NoClassDefFoundError")),
        ingest::toString);
  }
}
