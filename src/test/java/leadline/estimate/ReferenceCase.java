package leadline.estimate;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/** A folder of the reference cases: its data, its settings, and the results that it must give. */
record ReferenceCase(String name, Path data, JsonNode settings, List<ExpectedResult> results) {

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
    json.required("checks").forEach(check -> results.add(ExpectedResult.of(check)));
    return new ReferenceCase(
        json.required("case").textValue(),
        folder.resolve("data.csv"),
        json.required("settings"),
        results);
  }

  /** What is wrong, each result being left to the method that prints such names. */
  List<String> differences() throws IOException {
    List<String> differences = new ArrayList<>();
    List<ExpectedResult> unread = new ArrayList<>(results);
    for (Method method : Methods.ALL) {
      List<ExpectedResult> own = results.stream().filter(result -> isBy(method, result)).toList();
      if (!own.isEmpty()) {
        JsonNode printed = printed(method);
        own.forEach(result -> differences.addAll(result.differences(printed)));
        unread.removeAll(own);
      }
    }
    unread.forEach(result -> differences.add(result.name() + ": no method prints it"));
    return differences;
  }

  private static boolean isBy(Method method, ExpectedResult result) {
    return method.prints().stream().anyMatch(result::isPrintedUnder);
  }

  private JsonNode printed(Method method) throws IOException {
    EstimateSettings chosen = EstimateSettings.of(name, settings);
    return new ObjectMapper()
        .readTree(Methods.run(method.word(), DataFile.read(data), chosen).json());
  }

  @Override
  public String toString() {
    return name;
  }
}
