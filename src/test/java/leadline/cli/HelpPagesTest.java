package leadline.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every help page as it is printed, against the texts that were proof-read. */
class HelpPagesTest {

  private static final Path PAGES = Program.HOME.resolve("src/test/resources/cli/help");

  @ParameterizedTest
  @ValueSource(
      strings = {
        "run",
        "ingest",
        "withdraw",
        "compute",
        "publish",
        "tidy",
        "estimate",
        "check",
        "sample"
      })
  void thePageOfACommand(String command) throws IOException {
    assertEquals(
        Files.readString(PAGES.resolve(command + ".txt")),
        Program.forScheduler().run(command, "--help").clean().out());
  }

  @Test
  void thePageOfTheProgram() throws IOException {
    assertEquals(
        Files.readString(PAGES.resolve("leadline.txt")),
        Program.forScheduler().run("--help").clean().out());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "leadline",
        "run",
        "ingest",
        "withdraw",
        "compute",
        "publish",
        "tidy",
        "estimate",
        "check",
        "sample"
      })
  void noPageIsWiderThanATerminal(String page) throws IOException {
    List<String> lines = Files.readAllLines(PAGES.resolve(page + ".txt"));
    assertTrue(lines.contains("Examples:") && lines.contains("Exit codes:"));
    lines.forEach(line -> assertTrue(line.length() <= 80, line));
  }

  /** A page breaks between words, not within a time or a path. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "leadline",
        "run",
        "ingest",
        "withdraw",
        "compute",
        "publish",
        "tidy",
        "estimate",
        "check",
        "sample"
      })
  void noLineIsBrokenWithinAWord(String page) throws IOException {
    for (String line : Files.readAllLines(PAGES.resolve(page + ".txt"))) {
      assertTrue(line.matches("|.*[^:/=-]|[A-Z][a-z ]+:"), line);
    }
  }

  /** The list of commands shows the first sentence of each command's page, whole. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "run",
        "ingest",
        "withdraw",
        "compute",
        "publish",
        "tidy",
        "estimate",
        "check",
        "sample"
      })
  void theListOfCommandsHasWholeSentences(String command) throws IOException {
    String sentence =
        Files.readAllLines(PAGES.resolve(command + ".txt")).stream()
            .filter(line -> line.matches("[A-Z].*\\."))
            .findFirst()
            .orElseThrow();
    assertTrue(
        Files.readAllLines(PAGES.resolve("leadline.txt")).stream()
            .anyMatch(line -> line.strip().matches(command + " +" + Pattern.quote(sentence))),
        sentence);
  }
}
