package leadline.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** All that lies in a folder: to tell whether a command wrote to it. */
final class FolderTree {

  private FolderTree() {}

  /** By path: when it was written and what it holds. */
  static SortedMap<String, String> of(Path folder) {
    SortedMap<String, String> tree = new TreeMap<>();
    try (Stream<Path> paths = Files.walk(folder)) {
      for (Path path : paths.toList()) {
        tree.put(path.toString(), Files.getLastModifiedTime(path) + " " + content(path));
      }
      return tree;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String content(Path path) throws IOException {
    return Files.isRegularFile(path)
        ? java.util.Arrays.hashCode(Files.readAllBytes(path)) + " of " + Files.size(path)
        : "";
  }
}
