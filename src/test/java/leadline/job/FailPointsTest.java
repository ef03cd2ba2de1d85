package leadline.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadline.golden.Pipeline;
import leadline.lake.Lake;
import leadline.publish.Boundary;
import leadline.quantity.ReportMonth;
import leadline.settings.Step;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The process dies at each commit boundary in turn: readers see the old state or the new one, and
 * the next run completes, with nothing lost and nothing doubled.
 */
@Tag("long")
class FailPointsTest {

  private static final ReportMonth MONTH = ReportMonth.parse("2024-12");

  @TempDir Path folder;

  @Test
  void whateverPointTheProcessDiesAt() throws IOException {
    Path lake = folder.resolve("lake");
    new Pipeline(lake).run(steps(inboxWithMachine()));

    List<String> points = new ArrayList<>();
    for (int breakdown = 1; ; breakdown++) {
      Step[] steps = steps(inboxWithBreakdown(breakdown));
      DiesAt death = new DiesAt(breakdown);
      if (completes(new Pipeline(lake, death), steps)) {
        assertEquals(breakdown, breakdownsPublished());
        break;
      }
      points.add(death.lastReached);
      assertOldOrNew(lake, breakdown, death.lastReached);

      new Pipeline(lake).run(steps);
      assertEquals(breakdown, breakdownsPublished(), "after dying at: " + death.lastReached);
      assertEquals(breakdown, committed(lake) - 1, "after dying at: " + death.lastReached);
      JsonNode overhauls = manifest().at("/records/overhauls");
      assertEquals(breakdown, overhauls.get("current").asInt(), points::toString);
      assertEquals(0, overhauls.get("duplicate").asInt(), points::toString);
    }
    assertTrue(points.contains("overhauls appended"), points::toString);
    assertTrue(points.stream().anyMatch(point -> point.startsWith("batch ")), points::toString);
    assertTrue(points.contains("run committed"), points::toString);
    assertTrue(points.contains("run in place"), points::toString);
  }

  /** Each round takes back a breakdown of its own: 1 is published with it, 0 without. */
  @Test
  void whateverPointAWithdrawalDiesAt() throws IOException {
    Path lake = folder.resolve("lake");
    new Pipeline(lake).run(steps(inboxWithMachine()));

    List<String> points = new ArrayList<>();
    for (int round = 1; ; round++) {
      String batch = new Pipeline(lake).ingest(inboxWithBreakdown(round)).batch().orElseThrow();
      assertEquals(1, published(lake));
      Step[] withdrawal = {new Step.Withdraw(batch)};
      DiesAt death = new DiesAt(round);
      if (completes(new Pipeline(lake, death), withdrawal)) {
        assertEquals(0, published(lake));
        break;
      }
      points.add(death.lastReached);
      boolean isCommitted = death.lastReached.equals("withdrawal committed");
      assertEquals(1, breakdownsPublished(), "a published month stays as it is");
      assertEquals(isCommitted ? 0 : 1, published(lake), death.lastReached);
      if (!isCommitted) {
        new Pipeline(lake).run(withdrawal);
        assertEquals(0, published(lake));
      }
    }
    assertEquals(List.of("withdrawal begun", "withdrawal committed"), points);
  }

  /** The breakdowns of the month as all that is known gives it now. */
  private int published(Path lake) throws IOException {
    new Pipeline(lake).run(compute(), publish());
    return breakdownsPublished();
  }

  private void assertOldOrNew(Path lake, int breakdown, String point) throws IOException {
    assertTrue(List.of(breakdown - 1, breakdown).contains(breakdownsPublished()), point);
    int batches = committed(lake) - 1;
    assertTrue(List.of(breakdown - 1, breakdown).contains(batches), point);
    assertEquals(
        manifest().get("run").asText(),
        folder.resolve("out/2024-12").toRealPath().getFileName().toString(),
        point);
  }

  private static boolean completes(Pipeline pipeline, Step[] steps) {
    try {
      pipeline.run(steps);
      return true;
    } catch (Death death) {
      return false;
    }
  }

  private Step[] steps(Path inbox) {
    return new Step[] {new Step.Ingest(inbox), compute(), publish()};
  }

  private static Step compute() {
    return new Step.Compute(MONTH, Optional.empty());
  }

  private Step publish() {
    return new Step.Publish(MONTH, folder.resolve("out"), new Step.RunChoice.Newest());
  }

  private Path inboxWithMachine() throws IOException {
    Path inbox = Files.createDirectories(folder.resolve("inbox0"));
    Files.writeString(
        inbox.resolve("machines.csv"),
        """
        vessel,machine,kind,model,cylinders,places_per_cylinder
        plover,ME,main-engine,TWS-A,6,2
        """);
    Files.writeString(
        inbox.resolve("hours.csv"),
        """
        vessel,machine,read_at,hours,kind
        plover,ME,2022-12-31,0,counter
        plover,ME,2024-12-31,12000,counter
        """);
    return inbox;
  }

  private Path inboxWithBreakdown(int number) throws IOException {
    Path inbox = Files.createDirectories(folder.resolve("inbox" + number));
    Files.writeString(
        inbox.resolve("overhauls.csv"),
        """
        vessel,overhaul,machine,component,unit,place,done_on,reason
        plover,B%d,ME,fuel-injector,1,1,2023-%02d-%02d,breakdown
        """
            .formatted(number, 1 + number % 12, 1 + number % 28));
    return inbox;
  }

  private int breakdownsPublished() throws IOException {
    Path table = folder.resolve("out/2024-12/tables/component_rates.csv");
    try (CsvReader<NamedCsvRecord> rows = CsvReader.builder().ofNamedCsvRecord(table)) {
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

  private JsonNode manifest() throws IOException {
    return new ObjectMapper().readTree(folder.resolve("out/2024-12/run.json").toFile());
  }

  private static int committed(Path path) {
    try (Lake lake = Lake.open(path)) {
      return lake.batches().committed().size();
    }
  }

  private static final class DiesAt implements Boundary {
    private final int point;
    private int reached;
    private String lastReached = "";

    DiesAt(int point) {
      this.point = point;
    }

    @Override
    public void reached(String name) {
      lastReached = name;
      if (++reached == point) {
        throw new Death();
      }
    }
  }

  private static final class Death extends Error {
    private static final long serialVersionUID = 1;
  }
}
