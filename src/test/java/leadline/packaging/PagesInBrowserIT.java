package leadline.packaging;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The demo's pages in Chromium; what is looked for stands in {@code src/test/browser}. */
class PagesInBrowserIT {

  private static final Path SOURCES = Build.HOME.resolve("src/test/browser");
  private static final Path LOOKER = EmptyFolder.at(Build.TARGET.resolve("browser"));
  private static final Duration PATIENCE = Duration.ofMinutes(20);

  /** Which browser {@code check.mjs} starts. */
  private static final String BROWSER = "CHROMIUM";

  private static Finished onBadPages = new Finished(-1, List.of(), List.of());

  @BeforeAll
  static void theLookerIsInstalled() throws IOException {
    SearchPath.own().need("node", "Node.js 18 or later");
    SearchPath.own().need("npm", "npm");
    SearchPath.own().need("pdftotext", "poppler's pdftotext");
    try (Stream<Path> files = Files.list(SOURCES)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Files.copy(file, LOOKER.resolve(file.getFileName()));
      }
    }
    Finished npm =
        Program.system(
                "npm", "ci", "--engine-strict", "--ignore-scripts", "--no-audit", "--no-fund")
            .where(System.getenv())
            .in(LOOKER)
            .run();
    assertEquals(0, npm.exit(), npm::toString);
    onBadPages = look(SOURCES.resolve("bad"));
  }

  private static Finished look(Path folder) {
    return Program.system("node", "check.mjs", folder.toString())
        .where("HOME", LOOKER.toString())
        .where(BROWSER, browser())
        .in(LOOKER)
        .within(PATIENCE)
        .run();
  }

  private static String browser() {
    return Optional.ofNullable(System.getenv(BROWSER))
        .orElseGet(() -> SearchPath.own().need("chromium", "Chromium").toString());
  }

  @Test
  void nothingIsToComplainOfInThePublishedPages() {
    Finished looked = look(PublishedDemo.month());

    assertEquals(0, looked.exit(), () -> String.join("\n", looked.out()) + looked.err());
  }

  @Test
  void badPagesAreRefused() {
    assertEquals(1, onBadPages.exit(), onBadPages::toString);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "report/bad.html: asks for https://pages.example/style.css",
        "report/bad.html: asks for https://pages.example/logo.png",
        "report/bad.html: console: something went wrong",
        "report/bad.html: script: Cannot read properties of null",
        "report/bad.html: table unsorted, column number: aria-sort does not say ascending",
        "report/bad.html: table unsorted, column number is not sorted descending",
        "report/bad.html: table unsorted, column words has no button to sort by",
        "report/bad.html: table unsorted: wrong rows for 'no row has this'",
        "report/bad.html: table bare has no field to filter by",
        "report/bad.html: table unsorted: 0 lines copied of 121",
        "report/bad.html: table bare has no button to copy it",
        "report/bad.html: Tab goes to button 'First' where button 'Second' is next",
        "report/bad.html: axe image-alt (critical)",
        "report/bad.html: axe html-has-lang (serious)",
        "report/bad.html: wider than a telephone of 390 px: p 'A line of 900 px.'",
        "report/bad.html: without script not to be seen: 'Only a script shows this.'",
        "report/bad.html: printed off the paper of page 1: '",
        "report/bad.html: wider than the paper: p 'A line of 900 px.'",
        "report/bad.html: heads are not repeated in print",
        "report/bad.html: rows may be cut in print",
        "report/bad.html: printed page 2 has rows of table 0 without their heads",
        "briefing/long.html: 3 positions take 4 printed pages, not 2",
      })
  void aBadPageIsComplainedOf(String complaint) {
    assertTrue(
        onBadPages.out().stream().anyMatch(line -> line.startsWith(complaint)),
        () -> String.join("\n", onBadPages.out()));
  }
}
