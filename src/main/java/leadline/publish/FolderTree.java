package leadline.publish;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** A folder with all that is in it; links are met as links and not followed. */
final class FolderTree {

  private FolderTree() {}

  static void delete(Path folder) throws IOException {
    if (Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
      for (Path path : deepestFirst(folder)) {
        Files.delete(path);
      }
    }
  }

  /** Brings all files and folders to the disk, so that a rename never outruns their content. */
  static void force(Path folder) throws IOException {
    for (Path path : deepestFirst(folder)) {
      try (FileChannel open = FileChannel.open(path)) {
        open.force(true);
      }
    }
  }

  private static List<Path> deepestFirst(Path folder) throws IOException {
    try (Stream<Path> paths = Files.walk(folder)) {
      return paths.sorted(Comparator.reverseOrder()).toList();
    }
  }
}
