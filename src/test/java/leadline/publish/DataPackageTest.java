package leadline.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import leadline.origin.FileDigest;
import leadline.quantity.ReportMonth;
import leadline.summary.PublishedTables;
import leadline.summary.TableColumn;
import leadline.summary.TableSpec;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Against the rules of the Frictionless standards, version 1 (Data Package, Tabular Data Resource,
 * Table Schema, CSV Dialect), from memory of the standards.
 */
class DataPackageTest {

  private static final String NAME = "[-a-z0-9._/]+";
  private static final String HASH = "[^:]+:[a-fA-F0-9]+|[a-fA-F0-9]{32}";
  private static final Set<String> FIELD_TYPES =
      Set.of(
          "string",
          "number",
          "integer",
          "date",
          "time",
          "datetime",
          "year",
          "yearmonth",
          "boolean",
          "object",
          "geopoint",
          "geojson",
          "array",
          "duration",
          "any");

  @TempDir Path folder;
  private JsonNode dataPackage = new ObjectMapper().createObjectNode();

  @BeforeEach
  void publishAllTables() throws IOException {
    List<TableFiles> files = new ArrayList<>();
    files.add(TableFiles.write(SampleTable.table(), folder));
    for (TableSpec spec : PublishedTables.all()) {
      files.add(TableFiles.write(new PublishedTable(spec, List.of()), folder));
    }
    DataPackage.write(ReportMonth.parse("2024-12"), files, folder);
    dataPackage = new ObjectMapper().readTree(folder.resolve("datapackage.json").toFile());
  }

  @Test
  void thePackageNamesItsProfileAndResources() {
    assertEquals("tabular-data-package", dataPackage.path("profile").asText());
    assertTrue(dataPackage.path("name").asText().matches(NAME));
    assertEquals(1 + PublishedTables.all().size(), dataPackage.path("resources").size());
  }

  @Test
  void everyResourceIsATabularOneAndTellsItsFileTruly() throws IOException {
    Set<String> names = new HashSet<>();
    for (JsonNode resource : dataPackage.path("resources")) {
      assertEquals("tabular-data-resource", resource.path("profile").asText());
      assertTrue(resource.path("name").asText().matches(NAME));
      assertTrue(names.add(resource.path("name").asText()), "names are unique");
      assertEquals("csv", resource.path("format").asText());
      assertEquals("text/csv", resource.path("mediatype").asText());
      assertEquals("utf-8", resource.path("encoding").asText());
      assertTrue(resource.path("hash").asText().matches(HASH));
      assertFileAsTold(resource);
      assertFileAsTold(resource.path("parquet"));
    }
  }

  private void assertFileAsTold(JsonNode told) throws IOException {
    String path = told.path("path").asText();
    assertFalse(path.startsWith("/") || path.contains(".."), "paths stay below the package");
    assertEquals(Files.size(folder.resolve(path)), told.path("bytes").asLong());
    assertEquals("sha256:" + FileDigest.of(folder.resolve(path)).hex(), told.path("hash").asText());
  }

  @Test
  void everyFieldHasATypeAndTheKeysAreFields() {
    for (JsonNode resource : dataPackage.path("resources")) {
      JsonNode schema = resource.path("schema");
      Set<String> fields = new HashSet<>();
      for (JsonNode field : schema.path("fields")) {
        assertTrue(fields.add(field.path("name").asText()), "field names are unique");
        assertTrue(FIELD_TYPES.contains(field.path("type").asText()));
        assertTrue(field.path("constraints").path("required").isBoolean());
      }
      assertTrue(schema.path("primaryKey").isArray() && !schema.path("primaryKey").isEmpty());
      schema.path("primaryKey").forEach(key -> assertTrue(fields.contains(key.asText())));
      assertEquals("[\"\"]", schema.path("missingValues").toString());
    }
  }

  @Test
  void theHeaderOfEachCsvIsTheSchemasFieldsInOrder() throws IOException {
    for (JsonNode resource : dataPackage.path("resources")) {
      String csv =
          Files.readString(folder.resolve(resource.path("path").asText()), StandardCharsets.UTF_8);
      String header = csv.substring(0, csv.indexOf('\n'));
      List<String> fields = new ArrayList<>();
      resource.path("schema").path("fields").forEach(f -> fields.add(f.path("name").asText()));
      assertEquals(fields, List.of(header.split(",", -1)));
    }
  }

  @Test
  void fieldsSayWhatTheSpecificationSays() {
    for (TableSpec spec : PublishedTables.all()) {
      JsonNode fields = resource(spec.name()).path("schema").path("fields");
      assertEquals(spec.meaning(), resource(spec.name()).path("description").asText());
      for (int index = 0; index < spec.columns().size(); index++) {
        TableColumn<?> column = spec.columns().get(index);
        JsonNode field = fields.get(index);
        assertEquals(column.name(), field.path("name").asText());
        assertEquals(column.meaning(), field.path("description").asText());
        assertEquals(column.unit(), field.path("unit").asText(""));
        assertEquals(
            column.need() != TableColumn.Need.OPTIONAL,
            field.path("constraints").path("required").asBoolean());
      }
    }
  }

  @Test
  void eachTypeOfColumnHasItsTypeOfTheStandard() {
    List<String> types = new ArrayList<>();
    resource("sample_rates")
        .path("schema")
        .path("fields")
        .forEach(field -> types.add(field.path("type").asText()));
    assertEquals(List.of("string", "datetime", "integer", "number", "string"), types);
  }

  /** The default format of a datetime is YYYY-MM-DDThh:mm:ssZ, which has no fractions. */
  @Test
  void momentsMayHaveFractionsOfASecond() {
    JsonNode moment = resource("sample_rates").path("schema").path("fields").get(1);
    assertEquals("any", moment.path("format").asText());
  }

  private JsonNode resource(String name) {
    for (JsonNode resource : dataPackage.path("resources")) {
      if (resource.path("name").asText().equals(name)) {
        return resource;
      }
    }
    throw new AssertionError("no resource " + name);
  }
}
