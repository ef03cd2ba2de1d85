package leadline.publish;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import leadline.summary.TableRow;
import leadline.summary.TableSpec;
import org.apache.hadoop.conf.Configuration;
import org.apache.parquet.conf.ParquetConfiguration;
import org.apache.parquet.conf.PlainParquetConfiguration;
import org.apache.parquet.hadoop.ParquetWriter;
import org.apache.parquet.hadoop.api.WriteSupport;
import org.apache.parquet.hadoop.metadata.CompressionCodecName;
import org.apache.parquet.io.LocalOutputFile;
import org.apache.parquet.io.OutputFile;

/** A table as Parquet, with the columns and values of the CSV and the types of the spec. */
final class ParquetTable {

  private ParquetTable() {}

  static void write(PublishedTable table, Path file) throws IOException {
    TableSpec spec = table.spec();
    try (ParquetWriter<TableRow> parquet =
        new RowWriterBuilder(new LocalOutputFile(file), spec)
            .withConf(new PlainParquetConfiguration())
            .withCompressionCodec(CompressionCodecName.ZSTD)
            .withExtraMetaData(
                Map.of("leadline.table", spec.name(), "leadline.meaning", spec.meaning()))
            .build()) {
      for (TableRow row : table.rows()) {
        parquet.write(row);
      }
    }
  }

  private static final class RowWriterBuilder
      extends ParquetWriter.Builder<TableRow, RowWriterBuilder> {

    private final TableSpec spec;

    RowWriterBuilder(OutputFile file, TableSpec spec) {
      super(file);
      this.spec = spec;
    }

    @Override
    protected RowWriterBuilder self() {
      return this;
    }

    @Override
    @SuppressWarnings("deprecation") // abstract above, though Parquet calls the other one
    protected WriteSupport<TableRow> getWriteSupport(Configuration hadoop) {
      return new ParquetRowWriter(spec);
    }

    @Override
    protected WriteSupport<TableRow> getWriteSupport(ParquetConfiguration parquet) {
      return new ParquetRowWriter(spec);
    }
  }
}
