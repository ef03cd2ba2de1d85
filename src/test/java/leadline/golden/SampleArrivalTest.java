package leadline.golden;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import leadline.sample.FleetPlan;
import leadline.sample.PlainLayoutWriter;
import leadline.sample.SampleFleet;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * However the files of an invented fleet arrive, with all the errors of its records, the month has
 * the same digits: what is known at the end is what a fresh load of everything knows.
 */
@Tag("long")
class SampleArrivalTest {

  private static final int VESSELS = 2;
  private static final int BATCHES = 3;

  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(longs = {1, 2})
  void inBatchesInAnyOrderAndWithRowsInAnyOrder(long seed) throws IOException {
    Map<String, List<String>> exports = exports(seed);
    Random random = new Random(seed);

    assertEquals(month("whole", List.of(exports)), month("in batches", batches(exports, random)));
  }

  private Map<String, List<String>> exports(long seed) throws IOException {
    Path out = folder.resolve("exports");
    SampleFleet fleet = new SampleFleet(FleetPlan.usual(GoldenFleet.catalogue(), 2), seed);
    try (PlainLayoutWriter writer = new PlainLayoutWriter(out)) {
      for (int number = 1; number <= VESSELS; number++) {
        writer.write(fleet.vessel(number));
      }
    }
    Map<String, List<String>> files = new TreeMap<>();
    try (Stream<Path> written = Files.list(out)) {
      for (Path file : written.toList()) {
        files.put(file.getFileName().toString(), Files.readAllLines(file));
      }
    }
    return files;
  }

  /** Each file in one of the batches, its rows shuffled. */
  private static List<Map<String, List<String>>> batches(
      Map<String, List<String>> exports, Random random) {
    List<Map<String, List<String>>> batches = new ArrayList<>();
    for (int batch = 0; batch < BATCHES; batch++) {
      batches.add(new TreeMap<>());
    }
    exports.forEach(
        (name, lines) -> {
          List<String> rows = new ArrayList<>(lines.subList(1, lines.size()));
          Collections.shuffle(rows, random);
          rows.add(0, lines.get(0));
          batches.get(random.nextInt(BATCHES)).put(name, rows);
        });
    batches.removeIf(Map::isEmpty);
    return batches;
  }

  private Map<String, String> month(String name, List<Map<String, List<String>>> batches)
      throws IOException {
    Pipeline pipeline = new Pipeline(folder.resolve(name + " lake"));
    for (Map<String, List<String>> batch : batches) {
      Path inbox =
          Files.createDirectories(folder.resolve(name).resolve("" + batches.indexOf(batch)));
      for (Map.Entry<String, List<String>> file : batch.entrySet()) {
        Files.write(inbox.resolve(file.getKey()), file.getValue(), StandardCharsets.UTF_8);
      }
      pipeline.ingest(inbox);
    }
    pipeline.compute();
    Path out = folder.resolve(name + " out");
    pipeline.publish(out);
    return OrderAndSplittingTest.tables(out);
  }
}
