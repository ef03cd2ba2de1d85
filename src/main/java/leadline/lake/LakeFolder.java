package leadline.lake;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import leadline.problem.FileTrouble;
import org.apache.hadoop.conf.Configuration;
import org.apache.iceberg.CatalogProperties;
import org.apache.iceberg.jdbc.JdbcCatalog;

/** The folder of a lake, before it is opened. */
final class LakeFolder {

  static final String CATALOG = "catalog.db";
  static final String TABLES = "tables";
  static final String LOCK = "writer.lock";

  private static final Duration A_MAKING_AT_MOST = Duration.ofMinutes(1);

  private LakeFolder() {}

  /** The folder of a lake that is there already, by its real path. */
  static Path found(Path path) {
    Path folder = path.toAbsolutePath().normalize();
    if (!LakeFormat.isMarked(folder)) {
      throw new LakeException("There is no lake in " + folder + ": `ingest` makes one.");
    }
    try {
      return checked(folder);
    } catch (IOException e) {
      throw new LakeException(
          "Cannot read the lake folder " + folder + ": " + FileTrouble.inWords(e) + ".", e);
    }
  }

  /** The catalog of a lake; makes its tables where there are none, which one may do at a time. */
  static JdbcCatalog catalog(Path folder) {
    JdbcCatalog catalog = new JdbcCatalog();
    catalog.setConf(new Configuration());
    catalog.initialize(
        "leadline",
        Map.of(
            CatalogProperties.URI,
            "jdbc:sqlite:" + folder.resolve(CATALOG),
            CatalogProperties.WAREHOUSE_LOCATION,
            tables(folder),
            JdbcCatalog.PROPERTY_PREFIX + "schema-version",
            "V1"));
    return catalog;
  }

  /** As the tables' own paths have it: a URI would write blanks otherwise than the file system. */
  static String tables(Path folder) {
    return "file://" + folder.resolve(TABLES) + "/";
  }

  /** The mark comes last: what a process that died left of the making is made again. */
  private static void makeAlone(Path folder) throws IOException {
    LakeFormat.requireNothingElse(folder);
    WriterLock alone = WriterLock.acquire(folder.resolve(LOCK), A_MAKING_AT_MOST, words -> {});
    try {
      if (!LakeFormat.isMarked(folder)) {
        catalog(folder).close();
        LakeFormat.mark(folder);
      }
    } finally {
      alone.release();
    }
  }

  private static Path checked(Path folder) throws IOException {
    LakeFormat.check(folder);
    requireCatalog(folder);
    return folder.toRealPath();
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
      if (!LakeFormat.isMarked(folder)) {
        makeAlone(folder.toRealPath());
      }
      return checked(folder);
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
