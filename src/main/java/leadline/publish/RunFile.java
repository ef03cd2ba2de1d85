package leadline.publish;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import leadline.quantity.ReportMonth;

/** {@code run.json}: the manifest, and each table's rows and files. */
final class RunFile {

  private static final String NAME = "run.json";

  private RunFile() {}

  static void write(RunManifest manifest, List<TableFiles> tables, Path folder) throws IOException {
    ObjectNode json = StableJson.MAPPER.valueToTree(manifest);
    json.set(
        "tables", StableJson.MAPPER.valueToTree(tables.stream().map(PublishedRows::of).toList()));
    StableJson.write(json, folder.resolve(NAME));
  }

  /** The month of a published run; none where the folder holds no manifest. */
  static Optional<ReportMonth> monthOf(Path folder) throws IOException {
    Path file = folder.resolve(NAME);
    if (!Files.exists(file)) {
      return Optional.empty();
    }
    JsonNode month = StableJson.MAPPER.readTree(file.toFile()).path("month");
    return Optional.of(ReportMonth.parse(month.asText()));
  }

  private record PublishedRows(String name, long rows, FileFacts csv, FileFacts parquet) {
    static PublishedRows of(TableFiles files) {
      return new PublishedRows(
          files.table().spec().name(), files.table().rows().size(), files.csv(), files.parquet());
    }
  }
}
