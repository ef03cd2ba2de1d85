package leadline.packaging;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The launcher, called from anywhere, hands on its words, its options and the exit code. */
class LauncherIT {

  private static final Path CLEAN_INBOX = Build.HOME.resolve("sample-data/golden/2-later-exports");

  @TempDir private Path folder;

  @Test
  void fromAnyFolder() {
    Finished version = Program.launcher(Build.LAUNCHER, "--version").in(folder).run();

    assertAll(
        () -> assertEquals(0, version.exit(), version::toString),
        () -> assertTrue(version.lastLine().startsWith("leadline "), version::toString),
        () -> assertEquals(List.of(), version.err()));
  }

  /** Settings of the project itself are found although the link lies elsewhere. */
  @Test
  void throughASymbolicLink() throws IOException {
    Path bin = Files.createDirectories(folder.resolve("bin"));
    Path link = Files.createSymbolicLink(bin.resolve("absolute"), Build.LAUNCHER);
    Files.createSymbolicLink(folder.resolve("leadline"), Path.of("bin/absolute"));

    Finished check = Program.launcher(link, "check").in(folder).run();
    Finished again = Program.launcher(Path.of("./leadline"), "check").in(folder).run();

    assertEquals(new Finished(0, List.of(), List.of()), check);
    assertEquals(check, again);
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 75, 143})
  void handsOnTheExitCode(int exit) throws IOException {
    Path jdk = FakeTools.jdk(folder.resolve("jdk"), "17", exit);

    Finished run =
        Program.launcher(Build.LAUNCHER, "--version").where("JAVA_HOME", jdk.toString()).run();

    assertEquals(exit, run.exit(), run::toString);
  }

  @Test
  void handsOnEveryArgumentAsItIs() throws IOException {
    Path jdk = FakeTools.jdk(folder.resolve("jdk"), "17", 0);
    List<String> arguments = List.of("ingest", "--inbox", "a  b", "", "*", "$HOME", "\"q'");

    Finished run =
        Program.launcher(Build.LAUNCHER, arguments.toArray(String[]::new))
            .in(folder)
            .where("JAVA_HOME", jdk.toString())
            .run();

    List<String> out = run.out();
    assertEquals(
        arguments, out.subList(out.indexOf("leadline.cli.Main") + 1, out.size()), run::toString);
  }

  @Test
  void wrongWords() {
    Finished unknown = Program.launcher(Build.LAUNCHER, "sail").run();
    Finished absent = Program.launcher(Build.LAUNCHER, "check", "absent.json").in(folder).run();

    assertEquals(2, unknown.exit(), unknown::toString);
    assertEquals(2, absent.exit(), absent::toString);
    assertTrue(absent.err().get(0).contains("absent.json"), absent::toString);
  }

  /** Another program holds the lake's lock. */
  @Test
  void aLakeInUse() throws IOException {
    Path lake = folder.resolve("la ke");
    Program ingest =
        Program.launcher(
            Build.LAUNCHER,
            "ingest",
            "--wait",
            "0",
            "--inbox",
            CLEAN_INBOX.toString(),
            "--lake",
            lake.toString());
    Finished first = ingest.run();
    try (FileChannel file =
            FileChannel.open(lake.resolve("writer.lock"), StandardOpenOption.WRITE);
        FileLock held = file.lock()) {
      Finished second = ingest.run();

      assertTrue(held.isValid());
      assertEquals(75, second.exit(), second::toString);
      assertEquals(1, second.err().size(), second::toString);
    }
    assertAll(
        () -> assertEquals(0, first.exit(), first::toString),
        () -> assertEquals(List.of(), first.err(), "a clean ingest says nothing but its result"),
        () -> assertEquals(1, first.out().size(), first::toString));
  }

  @ParameterizedTest
  @CsvSource({"small, 1073741824, UseSerialGC", "large, 4294967296, UseParallelGC"})
  void sizesOfWork(String work, String heapBytes, String collector) {
    Finished run =
        Program.launcher(Build.LAUNCHER, "--version")
            .where("LEADLINE_WORK", work)
            .where("LEADLINE_JAVA_OPTS", "-XX:+PrintFlagsFinal -Dbut=this")
            .run();

    assertAll(
        () -> assertEquals(0, run.exit(), run::toString),
        () -> assertTrue(flag(run, "MaxHeapSize").contains(" = " + heapBytes + " ")),
        () -> assertTrue(flag(run, collector).contains(" = true ")));
  }

  private static String flag(Finished run, String name) {
    return run.out().stream()
        .filter(line -> line.contains(" " + name + " "))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no flag " + name));
  }

  @Test
  void aSizeOfWorkThatIsNone() {
    Finished run =
        Program.launcher(Build.LAUNCHER, "--version").where("LEADLINE_WORK", "medium").run();

    assertEquals(
        new Finished(2, List.of(), List.of("LEADLINE_WORK is 'medium': say small or large.")), run);
  }
}
