package leadline.packaging;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The launcher builds what is missing or older than its sources, and nothing else. */
class LauncherBuildIT {

  @TempDir private Path folder;

  private Path tools = Path.of("");
  private Path called = Path.of("");

  @BeforeEach
  void tools() throws IOException {
    tools = FakeTools.searchPath(folder.resolve("tools"));
    called = folder.resolve("called.txt");
  }

  private void maven(String... lines) throws IOException {
    FakeTools.script(
        tools.resolve("mvn"),
        "{ printf '%s\\n' \"$PWD\" \"$@\"; } > '" + called + "'",
        String.join("\n", lines));
  }

  private Finished launch(ProjectCopy project) throws IOException {
    return Program.launcher(project.launcher(), "--version")
        .where("PATH", tools.toString())
        .where("JAVA_HOME", FakeTools.jdk(folder.resolve("jdk"), "17", 0).toString())
        .run();
  }

  @Test
  void builtWhenMissing() throws IOException {
    ProjectCopy project = ProjectCopy.unbuilt(folder.resolve("the project"));
    maven("echo noise", "echo more >&2");

    Finished run = launch(project);

    assertAll(
        () -> assertEquals(0, run.exit(), run::toString),
        () -> assertEquals("--version", run.lastLine()),
        () -> assertFalse(run.out().contains("noise"), "standard output is for results"),
        () -> assertTrue(run.err().get(0).startsWith("Building Leadline"), run::toString),
        () -> assertEquals(project.home().toString(), Files.readAllLines(called).get(0)),
        () -> assertTrue(Files.readAllLines(called).contains("package")));
  }

  @Test
  void notBuiltWhenNewer() throws IOException {
    maven();

    Finished run = launch(ProjectCopy.built(folder.resolve("the project")));

    assertAll(
        () -> assertEquals(0, run.exit(), run::toString),
        () -> assertEquals(List.of(), run.err()),
        () -> assertFalse(Files.exists(called)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"pom.xml", "src/main"})
  void builtWhenOlderThanItsSources(String edited) throws IOException {
    ProjectCopy project = ProjectCopy.built(folder.resolve("the project"));
    project.edit(edited);
    maven();

    Finished run = launch(project);

    assertEquals(0, run.exit(), run::toString);
    assertTrue(Files.exists(called));
  }

  @Test
  void aBuildThatFails() throws IOException {
    maven("echo 'what is wrong'", "exit 3");

    Finished run = launch(ProjectCopy.unbuilt(folder.resolve("the project")));

    assertAll(
        () -> assertEquals(1, run.exit(), run::toString),
        () -> assertEquals(List.of(), run.out()),
        () -> assertTrue(run.err().contains("what is wrong"), run::toString));
  }

  @Test
  void noMaven() throws IOException {
    Finished run = launch(ProjectCopy.unbuilt(folder.resolve("the project")));

    assertAll(
        () -> assertEquals(2, run.exit(), run::toString),
        () -> assertEquals(1, run.err().size(), run::toString),
        () -> assertTrue(run.err().get(0).contains("found no mvn"), run::toString));
  }
}
