package leadline.lake;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.apache.iceberg.ManifestFile;
import org.apache.iceberg.ManifestFiles;
import org.apache.iceberg.ReachableFileUtil;
import org.apache.iceberg.Snapshot;
import org.apache.iceberg.Table;
import org.apache.iceberg.io.CloseableIterable;
import org.apache.iceberg.io.FileInfo;
import org.apache.iceberg.io.SupportsPrefixOperations;

/** Files in a table's folder that no snapshot of the table refers to. */
final class StrayFiles {

  private final Table table;
  private final AgeGuard guard;

  StrayFiles(Table table, AgeGuard guard) {
    this.table = table;
    this.guard = guard;
  }

  /**
   * Deletes those that are older than the guard.
   *
   * @return how many
   * @throws LakeException where a file that the table needs is missing; nothing is deleted then
   */
  long delete() {
    Map<String, FileInfo> present = present();
    Set<String> needed = needed();
    for (String file : needed) {
      if (!present.containsKey(file)) {
        throw new LakeException(
            "The lake has lost the file " + file + ": bring the whole lake back from a backup.");
      }
    }
    metadata().forEach(present::remove);
    needed.forEach(present::remove);
    long begins = guard.begins().toEpochMilli();
    List<FileInfo> strays =
        present.values().stream().filter(file -> file.createdAtMillis() < begins).toList();
    strays.forEach(file -> table.io().deleteFile(file.location()));
    return strays.size();
  }

  private Map<String, FileInfo> present() {
    Map<String, FileInfo> present = new TreeMap<>();
    if (table.io() instanceof SupportsPrefixOperations folders) {
      folders
          .listPrefix(table.location())
          .forEach(file -> present.put(path(file.location()), file));
    }
    return present;
  }

  /** The newest versions of the table's metadata; of the older ones some may be gone already. */
  private Set<String> metadata() {
    Set<String> files = new HashSet<>();
    ReachableFileUtil.metadataFileLocations(table, false).forEach(file -> files.add(path(file)));
    return files;
  }

  private Set<String> needed() {
    Set<String> files = new HashSet<>();
    Set<ManifestFile> manifests = new HashSet<>();
    for (Snapshot snapshot : table.snapshots()) {
      files.add(path(snapshot.manifestListLocation()));
      manifests.addAll(snapshot.allManifests(table.io()));
    }
    for (ManifestFile manifest : manifests) {
      files.add(path(manifest.path()));
      files.addAll(dataFiles(manifest));
    }
    return files;
  }

  private Set<String> dataFiles(ManifestFile manifest) {
    Set<String> files = new HashSet<>();
    try (CloseableIterable<String> paths =
        ManifestFiles.readPaths(manifest, table.io(), table.specs())) {
      paths.forEach(file -> files.add(path(file)));
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + manifest.path(), e);
    }
    return files;
  }

  /** The same file is written with one slash or three after its scheme. */
  private static String path(String location) {
    return location.replaceFirst("^file:/+", "/");
  }
}
