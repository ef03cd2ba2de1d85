package leadline.settings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import leadline.quantity.ReportMonth;
import org.junit.jupiter.api.Test;

class ShippedJobsTest {

  private static final Path HOME = Fixtures.HOME.toAbsolutePath();
  private static final Path JOBS = HOME.resolve("jobs");

  @Test
  void theDemoTakesItsExportsAndPublishesTheirLastMonth() {
    Job demo = Fixtures.job(JOBS.resolve("demo.json"), Map.of());

    ReportMonth month = ReportMonth.parse("2024-12");
    assertEquals(HOME.resolve("target/demo/lake"), demo.lake());
    assertEquals(
        List.of(
            new Step.Ingest(HOME.resolve("sample-data/lantern-bay")),
            new Step.Compute(month, Optional.empty()),
            new Step.Publish(
                month, HOME.resolve("target/demo/published"), new Step.RunChoice.Newest())),
        demo.steps());
  }

  @Test
  void theDemoGoesWhereTheEnvironmentSays() {
    Path elsewhere = HOME.resolve("some where");

    Job demo =
        Fixtures.job(JOBS.resolve("demo.json"), Map.of("LEADLINE_DEMO", elsewhere.toString()));

    assertEquals(elsewhere.resolve("lake"), demo.lake());
  }

  @Test
  void theMonthlyJobTakesEverythingFromTheEnvironment() {
    Job monthly =
        Fixtures.job(
            JOBS.resolve("monthly.json"),
            Map.of("LEADLINE_LAKE", "/lake", "LEADLINE_INBOX", "/in", "LEADLINE_OUT", "/out"));

    ReportMonth lastWhole = ReportMonth.parse("2025-01");
    assertEquals(Path.of("/lake").toAbsolutePath(), monthly.lake());
    Path out = Path.of("/out").toAbsolutePath();
    assertEquals(
        List.of(
            new Step.Ingest(Path.of("/in").toAbsolutePath()),
            new Step.Compute(lastWhole, Optional.empty()),
            new Step.Publish(lastWhole, out, new Step.RunChoice.Newest()),
            new Step.Tidy(Duration.ofDays(7), 1, List.of(out))),
        monthly.steps());
  }

  @Test
  void theMonthlyJobNamesEveryVariableThatIsMissing() {
    assertEquals(
        new TreeSet<>(
            List.of("$.lake", "$.steps[0].inbox", "$.steps[2].out", "$.steps[3].published[0]")),
        Fixtures.jobErrors(JOBS.resolve("monthly.json"), Map.of()).stream()
            .map(SettingError::path)
            .collect(Collectors.toCollection(TreeSet::new)));
  }

  /** That statistics alone never justify a longer interval: common practice, no source. */
  @Test
  void theCautionsEndWithWhatTheFiguresNeverJustify() {
    List<String> cautions = Fixtures.SHARED.cautions();

    assertEquals(7, cautions.size());
    assertTrue(cautions.get(5).contains("judgement of licensed engineers prevail"));
    assertTrue(cautions.get(6).contains("On their own they never justify a longer interval"));
  }
}
