package leadline.packaging;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** A folder that outlives a test class, so that several may read what one of them wrote. */
public final class EmptyFolder {

  private EmptyFolder() {}

  /** The folder, there and with nothing in it. */
  public static Path at(Path folder) {
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
