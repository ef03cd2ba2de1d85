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

  private LakeFormat() {}

  static boolean isMarked(Path folder) {
    return Files.exists(folder.resolve(FILE));
  }

  /** Marks an empty folder as a lake, or checks the mark of one that is a lake already. */
  static void markOrCheck(Path folder) throws IOException {
    if (isMarked(folder)) {
      check(folder);
      return;
    }
    try (Stream<Path> entries = Files.list(folder)) {
      if (entries.findAny().isPresent()) {
        throw new LakeException(
            "The folder " + folder + " is neither empty nor a lake: name another for the lake.");
      }
    }
    Path written = Files.writeString(folder.resolve(FILE + ".new"), CURRENT + "\n");
    Files.move(written, folder.resolve(FILE), StandardCopyOption.ATOMIC_MOVE);
  }

  /** Refuses a lake that a newer program wrote. */
  private static void check(Path folder) throws IOException {
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
