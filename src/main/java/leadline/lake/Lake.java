package leadline.lake;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Stream;
import leadline.fleet.RecordKind;
import org.apache.iceberg.AppendFiles;
import org.apache.iceberg.DataFile;
import org.apache.iceberg.PartitionSpec;
import org.apache.iceberg.Schema;
import org.apache.iceberg.Table;
import org.apache.iceberg.TableProperties;
import org.apache.iceberg.catalog.Namespace;
import org.apache.iceberg.catalog.TableIdentifier;
import org.apache.iceberg.jdbc.JdbcCatalog;
import org.apache.iceberg.types.TypeUtil;

/** A lake: a folder with the catalog's database, the writer's lock and the tables' files. */
public final class Lake implements AutoCloseable {

  private static final Map<String, String> TABLE_PROPERTIES =
      Map.of(
          TableProperties.PARQUET_COMPRESSION, "zstd",
          TableProperties.METADATA_DELETE_AFTER_COMMIT_ENABLED, "true",
          TableProperties.METADATA_PREVIOUS_VERSIONS_MAX, "20");

  private final Path folder;
  private final String tables;
  private final JdbcCatalog catalog;

  private Lake(Path folder) {
    this.folder = folder;
    this.tables = LakeFolder.tables(folder);
    this.catalog = LakeFolder.catalog(folder);
  }

  /** Opens the lake in the folder, and makes an empty one where there is none. */
  public static Lake openOrCreate(Path path) {
    return new Lake(LakeFolder.made(path));
  }

  /** Opens a lake that is already there. */
  public static Lake open(Path path) {
    return new Lake(LakeFolder.found(path));
  }

  /** Does some writing while no other process writes; see {@link WriterLock#acquire}. */
  public <T> T writing(Duration patience, Consumer<String> tell, Supplier<T> work) {
    WriterLock lock = WriterLock.acquire(folder.resolve(LakeFolder.LOCK), patience, tell);
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

  /**
   * The table, made empty where it is not there yet. One that an older program made gains the
   * columns that it lacks, empty in the rows that it holds.
   */
  Table table(LakeTable name, Schema schema) {
    return find(name)
        .map(table -> withColumnsOf(schema, table))
        .orElseGet(() -> create(name.identifier(), schema));
  }

  private static Table withColumnsOf(Schema schema, Table table) {
    Set<String> known = TypeUtil.indexByName(table.schema().asStruct()).keySet();
    if (!known.containsAll(TypeUtil.indexByName(schema.asStruct()).keySet())) {
      table.updateSchema().unionByNameWith(schema).commit();
    }
    return table;
  }

  /** The table, where something was written to it. */
  Optional<Table> find(LakeTable name) {
    if (!catalog.tableExists(name.identifier())) {
      return Optional.empty();
    }
    Table table = catalog.loadTable(name.identifier());
    if (!table.location().startsWith(tables)) {
      throw new LakeException(
          "The lake "
              + folder
              + " is a copy: its tables lie in "
              + table.location()
              + ". Name the lake that it was copied from.");
    }
    return Optional.of(table);
  }

  /** A table that something was written to. */
  Table need(LakeTable name) {
    return find(name)
        .orElseThrow(() -> new LakeException("The lake " + folder + " has lost " + name + "."));
  }

  /** All tables that something was written to. */
  List<LakeTable> tables() {
    return Stream.of(LakeTable.RECORDS, LakeTable.RESULTS)
        .map(Namespace::of)
        .filter(catalog::namespaceExists)
        .flatMap(namespace -> catalog.listTables(namespace).stream())
        .map(table -> new LakeTable(table.namespace().toString(), table.name()))
        .toList();
  }

  private Table create(TableIdentifier identifier, Schema schema) {
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
