package leadline.lake;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.stream.Stream;

/** The version of the lake's own layout, written in the file {@code format} of its folder. */
final class LakeFormat {

  static final int CURRENT = 1;

  private static final String FILE = "format";
  private static final String UNFINISHED = "format.new";

  private LakeFormat() {}

  static boolean isMarked(Path folder) {
    return Files.exists(folder.resolve(FILE));
  }

  /** Refuses a folder of other things. One that another process makes a lake meanwhile passes. */
  static void requireNothingElse(Path folder) throws IOException {
    boolean other;
    try (Stream<Path> entries = Files.list(folder)) {
      other = entries.anyMatch(entry -> !ofTheMaking(entry.getFileName().toString()));
    }
    if (other && !isMarked(folder)) {
      throw new LakeException(
          "The folder " + folder + " is neither empty nor a lake: name another for the lake.");
    }
  }

  static void mark(Path folder) throws IOException {
    Path written = Files.writeString(folder.resolve(UNFINISHED), CURRENT + "\n");
    Files.move(written, folder.resolve(FILE), StandardCopyOption.ATOMIC_MOVE);
  }

  private static boolean ofTheMaking(String name) {
    return name.equals(UNFINISHED)
        || name.equals(LakeFolder.LOCK)
        || name.startsWith(LakeFolder.CATALOG);
  }

  /** Refuses a lake that a newer program wrote. */
  static void check(Path folder) throws IOException {
    String text = Files.readString(folder.resolve(FILE)).strip();
    if (!text.matches("[0-9]{1,6}")) {
      throw new LakeException(
          folder.resolve(FILE)
              + " holds '"
              + text
              + "' where a number should be: bring the file back from a"
              + " backup.");
    }
    int version = Integer.parseInt(text);
    if (version > CURRENT) {
      throw new LakeException(
          "The lake "
              + folder
              + " has format "
              + version
              + "; this program knows formats up to "
              + CURRENT
              + ": use the newer program that wrote it.");
    }
  }
}
