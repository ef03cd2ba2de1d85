package leadline.lake;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import leadline.problem.FileTrouble;

/** The folder of a lake, before it is opened. */
final class LakeFolder {

  static final String CATALOG = "catalog.db";
  static final String TABLES = "tables";

  private LakeFolder() {}

  /** The folder of a lake that is there already, by its real path. */
  static Path found(Path path) {
    Path folder = path.toAbsolutePath().normalize();
    if (!LakeFormat.isMarked(folder)) {
      throw new LakeException("There is no lake in " + folder + ": `ingest` makes one.");
    }
    return made(folder);
  }

  /** The folder of a lake by its real path, made and marked where there is none. */
  static Path made(Path path) {
    Path folder = path.toAbsolutePath().normalize();
    try {
      if (!Files.isDirectory(folder)) {
        Files.createDirectories(folder);
      }
      if (!Files.isWritable(folder)) {
        throw new LakeException(
            "Cannot write to the lake folder " + folder + ": check its rights.");
      }
      LakeFormat.markOrCheck(folder);
      requireCatalog(folder);
      return folder.toRealPath();
    } catch (IOException e) {
      throw new LakeException(
          "Cannot make the lake folder " + folder + ": " + FileTrouble.inWords(e) + ".", e);
    }
  }

  /** Without its catalog a lake with tables would pass for an empty one. */
  private static void requireCatalog(Path folder) throws IOException {
    Path catalog = folder.resolve(CATALOG);
    boolean lost = Files.notExists(catalog) || Files.size(catalog) == 0;
    if (lost && Files.exists(folder.resolve(TABLES))) {
      throw new LakeException(
          "The lake " + folder + " has lost its " + CATALOG + ": bring it back from a backup.");
    }
  }
}
