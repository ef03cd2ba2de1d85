package leadline.stats;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** A folder of the reference cases: its input rows and the results that they must give. */
record ReferenceCase(
    String name,
    String method,
    Confidence confidence,
    List<NamedCsvRecord> rows,
    List<ExpectedResult> results) {

  /** A result and how far from it is still right; a single number is a list of one. */
  record ExpectedResult(String name, List<Double> values, double relative, double absolute) {

    private List<String> differences(double[] actual) {
      if (actual.length != values.size()) {
        return List.of(name + ": " + values.size() + " values expected, not " + actual.length);
      }
      List<String> differences = new ArrayList<>();
      for (int index = 0; index < actual.length; index++) {
        double expected = values.get(index);
        double tolerance = absolute + relative * Math.abs(expected);
        if (!(Math.abs(actual[index] - expected) <= tolerance)) {
          differences.add(name + "[" + index + "]: " + expected + ", not " + actual[index]);
        }
      }
      return differences;
    }
  }

  static List<ReferenceCase> all() throws IOException, URISyntaxException {
    Path folder =
        Path.of(Objects.requireNonNull(ReferenceCase.class.getResource("/reference")).toURI());
    List<ReferenceCase> cases = new ArrayList<>();
    try (Stream<Path> entries = Files.list(folder)) {
      for (Path entry : entries.filter(Files::isDirectory).sorted().toList()) {
        cases.add(read(entry));
      }
    }
    return cases;
  }

  private static ReferenceCase read(Path folder) throws IOException {
    JsonNode json = new ObjectMapper().readTree(folder.resolve("expected.json").toFile());
    List<ExpectedResult> results = new ArrayList<>();
    for (JsonNode check : json.required("checks")) {
      results.add(
          new ExpectedResult(
              check.required("name").textValue(),
              values(check.required("value")),
              check.required("tol_rel").doubleValue(),
              check.required("tol_abs").doubleValue()));
    }
    try (CsvReader<NamedCsvRecord> csv =
        CsvReader.builder().ofNamedCsvRecord(folder.resolve("data.csv"))) {
      return new ReferenceCase(
          json.required("case").textValue(),
          json.required("method").textValue(),
          Confidence.of(json.required("settings").required("conf").doubleValue()),
          csv.stream().toList(),
          results);
    }
  }

  private static List<Double> values(JsonNode value) {
    List<Double> values = new ArrayList<>();
    for (JsonNode number : value.isArray() ? value : List.of(value)) {
      if (!number.isNumber()) {
        throw new IllegalArgumentException("not a number: " + number);
      }
      values.add(number.doubleValue());
    }
    return values;
  }

  /** What is wrong with these results; more results than expected do no harm. */
  List<String> differences(Map<String, Supplier<double[]>> actual) {
    List<String> differences = new ArrayList<>();
    if (rows.isEmpty()) {
      differences.add("no rows");
    }
    if (results.isEmpty()) {
      differences.add("no results expected");
    }
    for (ExpectedResult result : results) {
      Supplier<double[]> computed = actual.get(result.name());
      if (result.values().isEmpty()) {
        differences.add(result.name() + ": no value expected");
      }
      differences.addAll(
          computed == null
              ? List.of(result.name() + ": not computed")
              : result.differences(computed.get()));
    }
    return differences;
  }

  @Override
  public String toString() {
    return name;
  }
}
