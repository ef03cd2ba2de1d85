package leadline.lake;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Supplier;
import leadline.fleet.RecordKind;
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

  /** Does some writing while no other process writes; see {@link WriterLock#acquire}. */
  public <T> T writing(Duration patience, Consumer<String> tell, Supplier<T> work) {
    WriterLock lock = WriterLock.acquire(folder.resolve("writer.lock"), patience, tell);
    try {
      return work.get();
    } finally {
      lock.release();
    }
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

  /** Appends the rows of an ingest, table by table; {@code appended} is told after each. */
  public void append(List<Loaded> loaded, Consumer<String> appended) {
    for (RecordKind kind : RecordKind.values()) {
      List<DataFile> files =
          loaded.stream()
              .filter(task -> task.kind() == kind)
              .flatMap(task -> task.recordFiles().stream())
              .toList();
      append(table(RecordTable.of(kind), RecordTable.schema(kind)), files);
      appended.accept(kind.word() + " appended");
    }
    append(
        table(LakeTable.REFUSED, RefusedRows.SCHEMA),
        loaded.stream().flatMap(task -> task.refusedFiles().stream()).toList());
    appended.accept("refused rows appended");
  }

  /** Appends what was rebuilt of vessels; {@code appended} is told after each table. */
  public void append(VesselFiles files, Consumer<String> appended) {
    append(table(LakeTable.PART_LIVES, PartLives.SCHEMA), files.lives());
    appended.accept("part lives appended");
    append(table(LakeTable.PROBLEMS, Problems.SCHEMA), files.problems());
    appended.accept("problems appended");
  }

  @Override
  public void close() {
    catalog.close();
  }
}
