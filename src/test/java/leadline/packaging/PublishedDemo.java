package leadline.packaging;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;

/** The demo's month, published once for all tests that look at its files. */
final class PublishedDemo {

  private static final Path FOLDER = EmptyFolder.at(Build.TARGET.resolve("published-demo"));
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
}
