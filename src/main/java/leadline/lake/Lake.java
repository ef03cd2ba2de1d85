package leadline.lake;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.apache.hadoop.conf.Configuration;
import org.apache.iceberg.AppendFiles;
import org.apache.iceberg.CatalogProperties;
import org.apache.iceberg.DataFile;
import org.apache.iceberg.PartitionSpec;
import org.apache.iceberg.Schema;
import org.apache.iceberg.Table;
import org.apache.iceberg.TableProperties;
import org.apache.iceberg.catalog.Namespace;
import org.apache.iceberg.catalog.TableIdentifier;
import org.apache.iceberg.jdbc.JdbcCatalog;

/** A lake: a folder with the catalog's database, the writer's lock and the tables' files. */
public final class Lake implements AutoCloseable {

  private static final Map<String, String> TABLE_PROPERTIES =
      Map.of(
          TableProperties.PARQUET_COMPRESSION, "zstd",
          TableProperties.METADATA_DELETE_AFTER_COMMIT_ENABLED, "true",
          TableProperties.METADATA_PREVIOUS_VERSIONS_MAX, "20");

  private final Path folder;
  private final JdbcCatalog catalog;

  private Lake(Path folder) {
    this.folder = folder;
    this.catalog = new JdbcCatalog();
    catalog.setConf(new Configuration());
    catalog.initialize(
        "leadline",
        Map.of(
            CatalogProperties.URI,
            "jdbc:sqlite:" + folder.resolve("catalog.db"),
            CatalogProperties.WAREHOUSE_LOCATION,
            folder.resolve("tables").toUri().toString(),
            JdbcCatalog.PROPERTY_PREFIX + "schema-version",
            "V1"));
  }

  /** Opens the lake in the folder, and makes an empty one where there is none. */
  public static Lake openOrCreate(Path path) {
    Path folder = path.toAbsolutePath().normalize();
    try {
      Files.createDirectories(folder);
      if (!Files.isWritable(folder)) {
        throw new LakeException("cannot write to the lake folder " + folder + ": check its rights");
      }
      LakeFormat.markOrCheck(folder);
      return new Lake(folder);
    } catch (IOException e) {
      throw new LakeException("cannot make the lake folder " + folder + ": " + e.getMessage(), e);
    }
  }

  /** Opens a lake that is already there. */
  public static Lake open(Path path) {
    Path folder = path.toAbsolutePath().normalize();
    if (!LakeFormat.isMarked(folder)) {
      throw new LakeException("there is no lake in " + folder + ": `ingest` makes one");
    }
    return openOrCreate(folder);
  }

  /** Waits for the right to write; see {@link WriterLock#acquire}. */
  public WriterLock lockForWriting(Duration patience, Consumer<String> tell) {
    return WriterLock.acquire(folder.resolve("writer.lock"), patience, tell);
  }

  public Batches batches() {
    return new Batches(this);
  }

  public Runs runs() {
    return new Runs(this);
  }

  /** The table, made empty where it is not there yet. */
  Table table(LakeTable name, Schema schema) {
    TableIdentifier identifier = name.identifier();
    if (catalog.tableExists(identifier)) {
      return catalog.loadTable(identifier);
    }
    Namespace namespace = identifier.namespace();
    if (!catalog.namespaceExists(namespace)) {
      catalog.createNamespace(namespace, Map.of());
    }
    return catalog.createTable(identifier, schema, PartitionSpec.unpartitioned(), TABLE_PROPERTIES);
  }

  /** Commits files to a table: they are part of it, or none of them is. */
  void append(Table table, List<DataFile> files) {
    if (files.isEmpty()) {
      return;
    }
    AppendFiles append = table.newFastAppend();
    files.forEach(append::appendFile);
    append.commit();
  }

  @Override
  public void close() {
    catalog.close();
  }
}
