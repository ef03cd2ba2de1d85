package leadline.packaging;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The launcher finds a Java that the engine runs on, or says in a sentence what is wrong. */
class LauncherJavaIT {

  @TempDir private Path folder;

  private static void refused(Finished run, String... words) {
    assertAll(
        () -> assertEquals(2, run.exit(), run::toString),
        () -> assertEquals(List.of(), run.out()),
        () -> assertEquals(1, run.err().size(), run::toString),
        () -> assertTrue(run.err().get(0).endsWith("."), run::toString));
    for (String word : words) {
      assertTrue(run.err().get(0).contains(word), () -> word + " is not in " + run.err());
    }
  }

  private Program launcher() throws IOException {
    return Program.launcher(Build.LAUNCHER, "--version")
        .where("PATH", FakeTools.searchPath(folder.resolve("tools")).toString())
        .withoutVariable("JAVA_HOME");
  }

  @Test
  void noJavaAtAll() throws IOException {
    refused(launcher().run(), "found no java", "JAVA_HOME");
  }

  @Test
  void aJavaHomeWithoutJava() throws IOException {
    Path empty = Files.createDirectory(folder.resolve("no jdk"));

    refused(launcher().where("JAVA_HOME", empty.toString()).run(), empty.toString());
  }

  @ParameterizedTest
  @ValueSource(strings = {"1.8.0_392", "11", "11.0.21", "16.0.2"})
  void tooOld(String version) throws IOException {
    Path jdk = FakeTools.jdk(folder.resolve("old jdk"), version, 0);

    refused(launcher().where("JAVA_HOME", jdk.toString()).run(), "too old", "17 to 22");
  }

  @ParameterizedTest
  @ValueSource(strings = {"23", "25", "25.0.1"})
  void tooNew(String version) throws IOException {
    Path jdk = FakeTools.jdk(folder.resolve("new jdk"), version, 0);

    refused(
        launcher().where("JAVA_HOME", jdk.toString()).run(), "Java " + version + ",", "17 to 22");
  }

  @ParameterizedTest
  @ValueSource(strings = {"17", "17.0.15", "21.0.1", "22"})
  void fits(String version) throws IOException {
    Path jdk = FakeTools.jdk(folder.resolve("a jdk"), version, 0);

    Finished run = launcher().where("JAVA_HOME", jdk.toString()).run();

    assertAll(
        () -> assertEquals(0, run.exit(), run::toString),
        () -> assertEquals("--version", run.lastLine()));
  }

  /** A search path may name Java by a link from elsewhere, as distributions do. */
  @Test
  void theJavaOfTheSearchPath() throws IOException {
    Path jdk = FakeTools.jdk(folder.resolve("a jdk"), "25", 0);
    Program launcher = launcher();
    Files.createSymbolicLink(folder.resolve("tools/java"), jdk.resolve("bin/java"));

    refused(launcher.run(), "Java 25,");
  }

  /** Some builds of Java have no file that names their version. */
  @Test
  void aJavaThatMustBeAsked() throws IOException {
    FakeTools.script(
        folder.resolve("unnamed/bin/java"), "echo 'openjdk version \"25.0.1\" 2025-10-21' >&2");

    refused(
        launcher().where("JAVA_HOME", folder.resolve("unnamed").toString()).run(), "Java 25.0.1,");
  }

  @Test
  void aJavaThatDoesNotSay() throws IOException {
    FakeTools.script(folder.resolve("dumb/bin/java"), "exit 0");

    refused(
        launcher().where("JAVA_HOME", folder.resolve("dumb").toString()).run(),
        "Cannot tell the version");
  }
}
