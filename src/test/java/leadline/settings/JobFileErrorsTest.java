package leadline.settings;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class JobFileErrorsTest {

  @TempDir Path folder;

  @Test
  void everythingWrongIsSaidAtOnce() throws IOException {
    assertEquals(
        Files.readAllLines(Fixtures.FOLDER.resolve("job-bad.errors.txt")),
        Fixtures.lines(Fixtures.jobErrors(Fixtures.FOLDER.resolve("job-bad.json"), Map.of())));
  }

  @Test
  void whatIsNotJsonIsSaidWithLineAndColumn() throws IOException {
    assertEquals(
        List.of(
            "$: not JSON at line 2, column 2: Unexpected character ('\"' (code 34)): was expecting"
                + " comma to separate Object entries"),
        errorsOf("{\"lake\": \"a\"\n \"steps\": []}"));
    assertEquals(
        List.of("$: not JSON at line 1, column 19: Duplicate field 'lake'"),
        errorsOf("{\"lake\":\"a\",\"lake\":\"b\"}"));
    assertEquals(List.of("$: the file is empty"), errorsOf(""));
    assertEquals(
        "$: not JSON at line 2, column 1",
        errorsOf("{}\n]").get(0).substring(0, "$: not JSON at line 2, column 1".length()));
  }

  @Test
  void whatIsNoJobAtAllIsSaidOnce() throws IOException {
    assertEquals(
        List.of(
            "$: an empty list is not allowed here; expected is a job: its lake and its steps in"
                + " order; paths are relative to the job file, and ${VARIABLE} or"
                + " ${VARIABLE:-default} is taken from the environment"),
        errorsOf("[]"));
  }

  @Test
  void aFileThatIsNotThereIsNamed() {
    Path file = folder.resolve("no job.json");

    assertEquals(
        List.of(new SettingError(file, "$", "there is no such file")),
        Fixtures.jobErrors(file, Map.of()));
  }

  @Test
  void aPolicyIntervalIsForAComponentOfTheCatalogue() throws IOException {
    assertEquals(
        List.of(
            "$.policy_interval_h['fuel-pump']: `x` is not allowed here; expected is a whole number"
                + " of running hours, from 1 to 1000000",
            "$.policy_interval_h.nozzle: the catalogue has no component `nozzle`; allowed are"
                + " `fuel-injector`, `exhaust-valve`, `starting-air-valve`, `generator-injector`,"
                + " `compressor-valve`",
            "$.policy_interval_h['fuel-pump']: the catalogue has no component `fuel-pump`; allowed"
                + " are `fuel-injector`, `exhaust-valve`, `starting-air-valve`,"
                + " `generator-injector`, `compressor-valve`"),
        errorsOf(
            """
            {"lake": "lake", "policy_interval_h": {"nozzle": 8000, "fuel-pump": "x"},
             "steps": [{"step": "ingest", "inbox": "in"}]}
            """));
  }

  @Test
  void theErrorsOfTheCatalogueAreSaidWithThoseOfTheJob() throws IOException {
    Path catalogue = Files.writeString(folder.resolve("own catalogue.json"), "{");
    Path job =
        Files.writeString(
            folder.resolve("job.json"), "{\"catalogue\": \"own catalogue.json\", \"steps\": []}");

    List<SettingError> errors = Fixtures.jobErrors(job, Map.of());

    assertEquals(
        List.of(job, job, catalogue.toAbsolutePath()),
        errors.stream().map(SettingError::file).toList());
    assertEquals(
        List.of("$", "$.lake", "$.steps"),
        errors.stream().map(SettingError::path).sorted().toList());
  }

  @Test
  void theExceptionsMessageHoldsEveryErrorWithItsFile() {
    Path file = Fixtures.FOLDER.resolve("job-bad.json");

    SettingsException refused =
        Assertions.assertThrows(SettingsException.class, () -> Fixtures.job(file, Map.of()));

    assertEquals(
        refused.errors().stream().map(e -> file + ": " + e.path() + ": " + e.sentence()).toList(),
        String.valueOf(refused.getMessage()).lines().toList());
  }

  @ParameterizedTest
  @ValueSource(strings = {"1e400", "1e999999999", "1e20", "123456789012345678901234567890"})
  void aNumberOfAnySizeIsHeldAgainstTheLimits(String number) throws IOException {
    assertEquals(
        List.of("$.lock_wait_s"),
        Fixtures.jobErrors(
                Files.writeString(
                    folder.resolve("job.json"),
                    """
                    {"lake": "lake", "lock_wait_s": %s, "steps": [{"step": "ingest", "inbox": "in"}]}
                    """
                        .formatted(number)),
                Map.of())
            .stream()
            .map(SettingError::path)
            .toList());
  }

  private List<String> errorsOf(String text) throws IOException {
    return Fixtures.lines(
        Fixtures.jobErrors(Files.writeString(folder.resolve("job.json"), text), Map.of()));
  }
}
