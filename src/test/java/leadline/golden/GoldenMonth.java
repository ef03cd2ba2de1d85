package leadline.golden;

import java.nio.file.Path;
import leadline.packaging.EmptyFolder;

/** The golden fleet's month, published once for all tests that do nothing but read it. */
final class GoldenMonth {

  private static final Path FOLDER = published();

  private GoldenMonth() {}

  /** The folder of the month. */
  static Path folder() {
    return FOLDER;
  }

  /** Blanks and an apostrophe in the names must do no harm. */
  private static Path published() {
    Path folder = EmptyFolder.at(GoldenFleet.HOME.toAbsolutePath().resolve("target/golden-month"));
    Path reports = folder.resolve("the fleet's reports");
    new Pipeline(folder.resolve("a lake")).golden(reports);
    return reports.resolve(GoldenFleet.MONTH.toString());
  }
}
