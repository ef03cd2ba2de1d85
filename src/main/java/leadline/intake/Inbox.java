package leadline.intake;

import java.io.IOException;
import java.io.Serializable;
import java.nio.file.FileVisitOption;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import leadline.problem.FileFault;
import leadline.problem.FileTrouble;

/**
 * What lies in an inbox folder and its subfolders, each list sorted by path. Hidden files and
 * folders are passed over, and so is the file in which the source speaks of its exports.
 *
 * @param exports the files to read
 * @param unusable the files that should be exports and cannot be read as such
 * @param ignored the paths of files that are not CSV
 */
public record Inbox(List<ExportFile> exports, List<FileFault> unusable, List<String> ignored)
    implements Serializable {

  public Inbox {
    exports = exports.stream().sorted(Comparator.comparing(ExportFile::path)).toList();
    unusable = unusable.stream().sorted(Comparator.comparing(FileFault::file)).toList();
    ignored = ignored.stream().sorted().toList();
  }

  /**
   * Lists a folder, and reads each export once for its digest.
   *
   * @throws InboxUnusable if it does not exist, is no folder or cannot be read
   */
  public static Inbox list(Path folder) {
    if (!Files.exists(folder)) {
      throw new InboxUnusable(
          "The inbox folder " + folder + " does not exist; create it or name another.");
    }
    if (!Files.isDirectory(folder)) {
      throw new InboxUnusable(
          "The inbox " + folder + " is not a folder; name the folder that holds the exports.");
    }
    if (!Files.isReadable(folder) || !Files.isExecutable(folder)) {
      throw new InboxUnusable(
          "The inbox folder " + folder + " cannot be read; ask for the right to read it.");
    }
    InboxWalk walk = new InboxWalk(folder);
    try {
      Files.walkFileTree(folder, EnumSet.of(FileVisitOption.FOLLOW_LINKS), Integer.MAX_VALUE, walk);
    } catch (IOException e) {
      throw new InboxUnusable(
          "The inbox folder " + folder + " cannot be listed: " + FileTrouble.inWords(e) + ".", e);
    }
    return walk.found();
  }
}
