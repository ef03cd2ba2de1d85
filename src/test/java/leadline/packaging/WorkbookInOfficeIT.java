package leadline.packaging;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** LibreOffice reads the demo's workbook and writes each sheet as CSV: nothing is lost. */
class WorkbookInOfficeIT {

  private static final String WORKBOOK = "leadline-2024-12";

  /** Commas, quotes, UTF-8, cells as they are and not as they are shown, every sheet. */
  private static final String EVERY_SHEET =
      "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,false,false,false,false,-1";

  private static final DateTimeFormatter SHOWN =
      DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm:ss", Locale.ROOT);

  /** The office rounds on its way through 15 digits. */
  private static final double FIFTEEN_DIGITS = 1e-14;

  /** What it keeps of a number near zero. */
  private static final double TWENTY_DECIMALS = 1e-20;

  private static final Path CONVERTED = EmptyFolder.at(Build.TARGET.resolve("office"));

  @BeforeAll
  static void convert() {
    Path program = SearchPath.own().need("soffice", "LibreOffice Calc");
    Finished office =
        Program.system(
                program.toString(),
                "-env:UserInstallation=" + CONVERTED.resolve("profile").toUri(),
                "--headless",
                "--convert-to",
                EVERY_SHEET,
                "--outdir",
                CONVERTED.toString(),
                PublishedDemo.month().resolve(WORKBOOK + ".xlsx").toString())
            .where("HOME", CONVERTED.toString())
            .run();
    assertEquals(0, office.exit(), office::toString);
  }

  @TestFactory
  Stream<DynamicTest> everyCellOfASheetIsThatOfItsTable() throws IOException {
    JsonNode tables =
        new ObjectMapper()
            .readTree(PublishedDemo.month().resolve("datapackage.json").toFile())
            .get("resources");
    List<DynamicTest> tests = new ArrayList<>();
    for (JsonNode table : tables) {
      if (table.path("path").asText().endsWith(".csv") && table.has("schema")) {
        tests.add(DynamicTest.dynamicTest(table.get("name").asText(), () -> sameCells(table)));
      }
    }
    assertFalse(tests.isEmpty());
    return tests.stream();
  }

  private static void sameCells(JsonNode table) throws IOException {
    Path file = PublishedDemo.month().resolve(table.get("path").asText());
    String name = file.getFileName().toString();
    List<CsvRecord> published = records(file);
    List<CsvRecord> converted = records(CONVERTED.resolve(WORKBOOK + "-" + name));
    List<String> types = table.get("schema").get("fields").findValuesAsText("type");

    assertEquals(published.size(), converted.size(), name);
    for (int row = 1; row < published.size(); row++) {
      for (int column = 0; column < types.size(); column++) {
        String expected = published.get(row).getField(column);
        String found = converted.get(row).getField(column);
        String where = name + ", row " + row + ", column " + published.get(0).getField(column);
        same(types.get(column), expected, found, where);
      }
    }
  }

  private static void same(String type, String expected, String found, String where) {
    if (expected.isEmpty()) {
      assertEquals("", found, where);
    } else if (type.equals("number")) {
      double number = Double.parseDouble(expected);
      assertEquals(
          number, written(found), Math.abs(number) * FIFTEEN_DIGITS + TWENTY_DECIMALS, where);
    } else if (type.equals("datetime")) {
      Instant moment = LocalDateTime.parse(found, SHOWN).toInstant(ZoneOffset.UTC);
      Duration off = Duration.between(moment, Instant.parse(expected)).abs();
      assertEquals(0, off.toSeconds(), where);
    } else {
      assertEquals(unguarded(expected), found, where);
    }
  }

  /** A number as the office writes it: a share as a percentage. */
  private static double written(String number) {
    return number.endsWith("%")
        ? Double.parseDouble(number.substring(0, number.length() - 1)) / 100
        : Double.parseDouble(number);
  }

  /** A text of the CSV without the apostrophe that keeps spreadsheets from reading a formula. */
  private static String unguarded(String text) {
    return text.matches("(?s)'[-=+@'\t\r].*") ? text.substring(1) : text;
  }

  private static List<CsvRecord> records(Path file) throws IOException {
    try (CsvReader<CsvRecord> csv = CsvReader.builder().ofCsvRecord(file)) {
      return csv.stream().toList();
    }
  }
}
