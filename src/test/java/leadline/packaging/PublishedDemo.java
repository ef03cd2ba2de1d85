package leadline.packaging;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** The demo's month, published once for all tests that look at its files. */
final class PublishedDemo {

  private static final Path FOLDER = emptied(Build.TARGET.resolve("published-demo"));
  private static final Path MONTH = published();

  private PublishedDemo() {}

  /** The folder of the month. */
  static Path month() {
    return MONTH;
  }

  private static Path published() {
    Finished run =
        Program.leadline("run", Build.HOME.resolve("jobs/demo.json").toString())
            .where("LEADLINE_DEMO", FOLDER.toString())
            .run();
    assertEquals(0, run.exit(), run::toString);
    return FOLDER.resolve("published/2024-12");
  }

  /** The folder, there and with nothing in it. */
  static Path emptied(Path folder) {
    try {
      if (Files.exists(folder)) {
        try (Stream<Path> parts = Files.walk(folder)) {
          List<Path> deepestFirst = parts.sorted(Comparator.reverseOrder()).toList();
          for (Path part : deepestFirst) {
            Files.delete(part);
          }
        }
      }
      return Files.createDirectories(folder);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
