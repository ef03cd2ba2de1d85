package leadline.publish;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The two files of a table, which hold the same rows. */
record TableFiles(PublishedTable table, FileFacts csv, FileFacts parquet) {

  /** Writes {@code tables/NAME.csv} and {@code tables/NAME.parquet} below the folder. */
  static TableFiles write(PublishedTable table, Path folder) throws IOException {
    Path tables = Files.createDirectories(folder.resolve("tables"));
    Path csv = tables.resolve(table.spec().name() + ".csv");
    Path parquet = tables.resolve(table.spec().name() + ".parquet");
    CsvTable.write(table, csv);
    ParquetTable.write(table, parquet);
    return new TableFiles(table, FileFacts.of(folder, csv), FileFacts.of(folder, parquet));
  }
}
