package leadline.packaging;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * A fleet of one vessel on disk: its exports, a lake and a published folder. Each export brings one
 * breakdown, so that a lost or doubled row is seen in a published figure.
 */
record KilledFleet(Path folder) {

  private static final String MONTH = "2024-12";

  /** Columns that say when and in which run or batch, not what. */
  private static final List<String> OF_THE_RUN =
      List.of(
          "first_asked",
          "age_days",
          "known_at",
          "batch",
          "committed_at",
          "first_batch",
          "last_batch");

  static KilledFleet in(Path folder) throws IOException {
    KilledFleet fleet = new KilledFleet(Files.createDirectories(folder));
    Files.createDirectories(fleet.inbox());
    Files.writeString(
        fleet.inbox().resolve("machines.csv"),
        """
        vessel,machine,kind,model,cylinders,places_per_cylinder
        plover,ME,main-engine,TWS-A,6,2
        """);
    Files.writeString(
        fleet.inbox().resolve("hours.csv"),
        """
        vessel,machine,read_at,hours,kind
        plover,ME,2021-12-31,0,counter
        plover,ME,2024-12-31,18000,counter
        """);
    Files.writeString(
        fleet.job(),
        """
        {"lake": "lake", "steps": [
          {"step": "ingest", "inbox": "inbox"},
          {"step": "compute", "month": "%1$s"},
          {"step": "publish", "month": "%1$s", "out": "published"}]}
        """
            .formatted(MONTH));
    return fleet;
  }

  Path job() {
    return folder.resolve("job.json");
  }

  Path lake() {
    return folder.resolve("lake");
  }

  private Path inbox() {
    return folder.resolve("inbox");
  }

  private Path published() {
    return folder.resolve("published").resolve(MONTH);
  }

  /** One more export, of one breakdown; the number is its day and its place. */
  void export(int number) throws IOException {
    int day = number % 28;
    int month = number / 28 % 12;
    int year = number / (28 * 12);
    Files.writeString(
        inbox().resolve("overhauls_%04d.csv".formatted(number)),
        """
        vessel,overhaul,machine,component,unit,place,done_on,reason
        plover,B%d,ME,fuel-injector,%d,%d,%d-%02d-%02d,breakdown
        """
            .formatted(
                number, 1 + number % 6, 1 + number / 6 % 2, 2022 + year, 1 + month, 1 + day));
  }

  /** The breakdowns that the published month counts; none where nothing is published. */
  int breakdownsPublished() throws IOException {
    if (Files.notExists(published())) {
      return 0;
    }
    try (CsvReader<NamedCsvRecord> rows =
        CsvReader.builder().ofNamedCsvRecord(published().resolve("tables/component_rates.csv"))) {
      return rows.stream()
          .filter(row -> row.getField("window").equals("since-start"))
          .filter(row -> row.getField("level").equals("fleet"))
          .filter(row -> row.getField("component").equals("fuel-injector"))
          .filter(row -> row.getField("endpoint").equals("breakdown"))
          .mapToInt(row -> Integer.parseInt(row.getField("events")))
          .findFirst()
          .orElseThrow();
    }
  }

  /** Files of published runs that are not what their data package says. */
  List<String> brokenFiles() throws IOException {
    List<String> broken = new ArrayList<>();
    for (Path run : runs()) {
      JsonNode json = new ObjectMapper().readTree(run.resolve("datapackage.json").toFile());
      for (JsonNode resource : json.get("resources")) {
        for (JsonNode file : List.of(resource, resource.get("parquet"))) {
          Path path = run.resolve(file.get("path").asText());
          if (Files.notExists(path)
              || !file.get("hash").asText().equals("sha256:" + digest(path))) {
            broken.add(path.toString());
          }
        }
      }
    }
    return broken;
  }

  /** The run that the month leads to, and all others that are in place. */
  private List<Path> runs() throws IOException {
    Path runs = folder.resolve("published/.runs");
    List<Path> found = new ArrayList<>();
    if (Files.isSymbolicLink(published())) {
      found.add(published().toRealPath());
    }
    if (Files.isDirectory(runs)) {
      try (Stream<Path> entries = Files.list(runs)) {
        entries.filter(run -> !run.getFileName().toString().startsWith(".")).forEach(found::add);
      }
    }
    return found;
  }

  private static String digest(Path file) throws IOException {
    try {
      return HexFormat.of()
          .formatHex(MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file)));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  /** All rows of all published tables, but for when and in which run or batch. */
  Map<String, List<Map<String, String>>> tables() throws IOException {
    Map<String, List<Map<String, String>>> tables = new TreeMap<>();
    try (Stream<Path> files = Files.list(published().resolve("tables"))) {
      for (Path file : files.filter(path -> path.toString().endsWith(".csv")).toList()) {
        tables.put(file.getFileName().toString(), rows(file));
      }
    }
    return tables;
  }

  private static List<Map<String, String>> rows(Path file) throws IOException {
    try (CsvReader<NamedCsvRecord> csv = CsvReader.builder().ofNamedCsvRecord(file)) {
      List<Map<String, String>> rows =
          csv.stream()
              .<Map<String, String>>map(row -> new TreeMap<>(row.getFieldsAsMap()))
              .sorted(
                  Comparator.comparing((Map<String, String> row) -> row.getOrDefault("file", ""))
                      .thenComparing(row -> row.getOrDefault("query", "")))
              .toList();
      rows.forEach(row -> row.keySet().removeAll(OF_THE_RUN));
      return rows;
    }
  }
}
