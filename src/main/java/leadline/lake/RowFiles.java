package leadline.lake;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Iterator;
import java.util.List;
import java.util.UUID;
import org.apache.iceberg.DataFile;
import org.apache.iceberg.FileScanTask;
import org.apache.iceberg.PartitionSpec;
import org.apache.iceberg.Schema;
import org.apache.iceberg.Table;
import org.apache.iceberg.data.Record;
import org.apache.iceberg.data.parquet.GenericParquetReaders;
import org.apache.iceberg.data.parquet.GenericParquetWriter;
import org.apache.iceberg.io.CloseableIterable;
import org.apache.iceberg.io.DataWriter;
import org.apache.iceberg.parquet.Parquet;

/** The Parquet files of a table. A written file belongs to no table until it is committed. */
final class RowFiles {

  private RowFiles() {}

  /** Writes rows to one new file; none where there are no rows. */
  static List<DataFile> write(Table table, Iterator<Record> rows) {
    if (!rows.hasNext()) {
      return List.of();
    }
    String location = table.locationProvider().newDataLocation(UUID.randomUUID() + ".parquet");
    try {
      DataWriter<Record> writer =
          Parquet.writeData(table.io().newOutputFile(location))
              .forTable(table)
              .withSpec(PartitionSpec.unpartitioned())
              .createWriterFunc(GenericParquetWriter::create)
              .build();
      try (writer) {
        rows.forEachRemaining(writer::write);
      }
      return List.of(writer.toDataFile());
    } catch (IOException e) {
      throw new UncheckedIOException("cannot write " + location, e);
    }
  }

  /** The rows of one stretch of a file. The same record object is handed out for each row. */
  static CloseableIterable<Record> read(Table table, FileScanTask stretch, Schema projection) {
    return Parquet.read(table.io().newInputFile(stretch.file().location()))
        .split(stretch.start(), stretch.length())
        .project(projection)
        .createReaderFunc(file -> GenericParquetReaders.buildReader(projection, file))
        .reuseContainers()
        .build();
  }

  /** All columns of a file's rows, each row an object of its own. */
  static CloseableIterable<Record> rows(Table table, FileScanTask file) {
    Schema schema = table.schema();
    return Parquet.read(table.io().newInputFile(file.file().location()))
        .project(schema)
        .createReaderFunc(parquet -> GenericParquetReaders.buildReader(schema, parquet))
        .build();
  }

  /** All rows of a small table. */
  static CloseableIterable<Record> readAll(Table table) {
    return org.apache.iceberg.data.IcebergGenerics.read(table).build();
  }
}
