package leadline.publish;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import leadline.quantity.ReportMonth;
import leadline.summary.TableColumn;
import leadline.summary.TableSpec;

/**
 * {@code datapackage.json}: the tables described after the Frictionless Data Package standard,
 * version 1, profile {@code tabular-data-package}. A resource is the table's CSV; beyond the
 * standard, {@code parquet} names the Parquet file of the same rows, and {@code unit} the unit of a
 * field ({@code 1} for counts and shares).
 */
final class DataPackage {

  private DataPackage() {}

  static void write(ReportMonth month, List<TableFiles> tables, Path folder) throws IOException {
    ObjectNode json = StableJson.MAPPER.createObjectNode();
    json.put("profile", "tabular-data-package");
    json.put("name", "leadline-" + month);
    json.put("title", "Overhauls, findings and part lives of the fleet, " + month);
    json.put("description", CsvTable.GUARD_IN_WORDS);
    ArrayNode resources = json.putArray("resources");
    tables.forEach(table -> resources.add(resource(table)));
    StableJson.write(json, folder.resolve("datapackage.json"));
  }

  private static ObjectNode resource(TableFiles table) {
    TableSpec spec = table.table().spec();
    ObjectNode json = StableJson.MAPPER.createObjectNode();
    json.put("profile", "tabular-data-resource");
    json.put("name", spec.name());
    json.put("description", spec.meaning());
    json.put("path", table.csv().path());
    json.put("format", "csv");
    json.put("mediatype", "text/csv");
    json.put("encoding", "utf-8");
    json.put("bytes", table.csv().bytes());
    json.put("hash", table.csv().hash());
    json.putObject("dialect")
        .put("delimiter", ",")
        .put("lineTerminator", "\n")
        .put("skipInitialSpace", false);
    json.set("schema", schema(spec));
    json.set("parquet", StableJson.MAPPER.valueToTree(table.parquet()));
    return json;
  }

  private static ObjectNode schema(TableSpec spec) {
    ObjectNode json = StableJson.MAPPER.createObjectNode();
    ArrayNode fields = json.putArray("fields");
    spec.columns().forEach(column -> fields.add(field(column)));
    if (!spec.keys().isEmpty()) {
      ArrayNode key = json.putArray("primaryKey");
      spec.keys().forEach(column -> key.add(column.name()));
    }
    json.putArray("missingValues").add("");
    return json;
  }

  private static ObjectNode field(TableColumn<?> column) {
    ObjectNode json = StableJson.MAPPER.createObjectNode();
    json.put("name", column.name());
    json.put("type", type(column));
    if (CellKind.of(column) == CellKind.MOMENT) {
      json.put("format", "any"); // the standard's default has no fractions of a second
    }
    json.put("description", column.meaning());
    if (!column.unit().isEmpty()) {
      json.put("unit", column.unit());
    }
    json.putObject("constraints").put("required", column.need() != TableColumn.Need.OPTIONAL);
    return json;
  }

  private static String type(TableColumn<?> column) {
    return switch (CellKind.of(column)) {
      case TEXT -> "string";
      case COUNT -> "integer";
      case REAL -> "number";
      case MOMENT -> "datetime";
    };
  }
}
