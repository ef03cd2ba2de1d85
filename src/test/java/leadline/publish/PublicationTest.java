package leadline.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import leadline.origin.FileDigest;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PublicationTest {

  @TempDir Path temporary;
  private Path folder = Path.of("");

  @BeforeEach
  void folderWithBlanks() {
    folder = temporary.resolve("figures of the fleet");
  }

  @Test
  void theMonthAndLatestLeadToTheRunByRelativeLinks() throws IOException {
    List<Path> links = publish("run-1", "2024-12", Standing.CURRENT);
    assertEquals(List.of(folder.resolve("2024-12"), folder.resolve("latest")), links);
    for (Path link : links) {
      assertEquals(Path.of(".runs", "run-1"), Files.readSymbolicLink(link));
    }
    assertEquals(
        Set.of(
            "CAUTIONS.txt",
            "datapackage.json",
            "run.json",
            "tables",
            "tables/sample_rates.csv",
            "tables/sample_rates.parquet"),
        everythingBelow(folder.resolve(".runs/run-1")));
    assertEquals(
        "Keep clear of the spray.\n", Files.readString(folder.resolve("2024-12/CAUTIONS.txt")));
  }

  @Test
  void linksHoldWhenTheFolderIsMovedAway() throws IOException {
    publish("run-1", "2024-12", Standing.CURRENT);
    Path elsewhere = Files.move(folder, temporary.resolve("elsewhere"));
    assertTrue(Files.exists(elsewhere.resolve("latest/run.json")));
  }

  @Test
  void aRunThatIsThereAlreadyStaysAsItIs() throws IOException {
    publish("run-1", "2024-12", Standing.CURRENT);
    Path manifest = folder.resolve(".runs/run-1/run.json");
    FileDigest before = FileDigest.of(manifest);
    publish("run-1", "2024-11", Standing.CURRENT);
    assertEquals(before, FileDigest.of(manifest));
  }

  @Test
  void aNewerRunOfTheMonthTakesItsPlace() throws IOException {
    publish("run-1", "2024-12", Standing.CURRENT);
    publish("run-2", "2024-12", Standing.CURRENT);
    assertEquals("run-2", runBehind("2024-12"));
    assertEquals("run-2", runBehind("latest"));
    assertTrue(Files.exists(folder.resolve(".runs/run-1/run.json")), "the older run is kept");
  }

  @Test
  void latestNeverGoesBackToAnEarlierMonth() throws IOException {
    publish("run-1", "2024-12", Standing.CURRENT);
    List<Path> links = publish("run-2", "2024-11", Standing.CURRENT);
    assertEquals(List.of(folder.resolve("2024-11")), links);
    assertEquals("run-2", runBehind("2024-11"));
    assertEquals("run-1", runBehind("latest"));
    publish("run-3", "2025-01", Standing.CURRENT);
    assertEquals("run-3", runBehind("latest"));
  }

  @Test
  void whatWasKnownThenHasALinkOfItsOwn() throws IOException {
    publish("run-1", "2024-12", Standing.CURRENT);
    publish("run-2", "2024-12", Standing.AS_KNOWN_THEN);
    assertEquals("run-2", runBehind("2024-12-known-at-20250110T120000Z"));
    assertEquals("run-1", runBehind("2024-12"));
    assertEquals("run-1", runBehind("latest"));
  }

  @Test
  void aFolderInTheLinksPlaceIsNotTouched() throws IOException {
    Path own = Files.createDirectories(folder.resolve("2024-12"));
    Files.writeString(own.resolve("notes.txt"), "mine");
    FileSystemException refused =
        assertThrows(
            FileSystemException.class, () -> publish("run-1", "2024-12", Standing.CURRENT));
    assertTrue(refused.toString().contains("move it away"), refused.toString());
    assertEquals("mine", Files.readString(own.resolve("notes.txt")));
  }

  @Test
  void aPublisherThatDiesAnywhereLeavesTheOldMonthOrTheNew() throws IOException {
    List<String> points = new ArrayList<>();
    new Publication(temporary.resolve("rehearsal"), Documents.NONE, points::add)
        .publish(SampleIssue.of("run-2", "2024-12", Standing.CURRENT));
    assertEquals(
        List.of(
            "tables staged",
            "run staged",
            "run in place",
            "link staged: 2024-12",
            "link in place: 2024-12",
            "link staged: latest",
            "link in place: latest"),
        points);
    for (String deadly : points) {
      dieAt(deadly);
    }
  }

  private void dieAt(String deadly) throws IOException {
    folder = temporary.resolve("died at " + deadly.replace(':', ' '));
    publish("run-1", "2024-12", Standing.CURRENT);
    Publication dying =
        new Publication(
            folder,
            Documents.NONE,
            point -> {
              assertReadersSeeWholeMonths(point);
              if (point.equals(deadly)) {
                throw new Died();
              }
            });
    Issue newer = SampleIssue.of("run-2", "2024-12", Standing.CURRENT);
    assertThrows(Died.class, () -> dying.publish(newer));
    assertReadersSeeWholeMonths(deadly);

    new Publication(folder, Documents.NONE).publish(newer);
    assertEquals("run-2", runBehind("2024-12"));
    assertEquals("run-2", runBehind("latest"));
    assertWhole(folder.resolve("2024-12"));
    assertEquals(Set.of(".runs", "2024-12", "latest"), namesIn(folder));
    assertEquals(Set.of(".lock", "run-1", "run-2"), namesIn(folder.resolve(".runs")));
  }

  private void assertReadersSeeWholeMonths(String point) {
    try {
      for (String link : List.of("2024-12", "latest")) {
        assertTrue(Set.of("run-1", "run-2").contains(runBehind(link)), point);
        assertWhole(folder.resolve(link));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(point, e);
    }
  }

  /** Every file that the data package tells of is there with its digest, as are the others. */
  private static void assertWhole(Path month) throws IOException {
    JsonNode dataPackage = new ObjectMapper().readTree(month.resolve("datapackage.json").toFile());
    for (JsonNode resource : dataPackage.path("resources")) {
      for (JsonNode file : List.of(resource, resource.path("parquet"))) {
        assertEquals(
            file.path("hash").asText(),
            "sha256:" + FileDigest.of(month.resolve(file.path("path").asText())).hex());
      }
    }
    assertTrue(Files.size(month.resolve("CAUTIONS.txt")) > 0);
    assertFalse(dataPackage.path("resources").isEmpty());
  }

  private List<Path> publish(String run, String month, Standing standing) throws IOException {
    return new Publication(folder, Documents.NONE).publish(SampleIssue.of(run, month, standing));
  }

  private String runBehind(String link) throws IOException {
    Path manifest = folder.resolve(link).resolve("run.json");
    return new ObjectMapper().readTree(manifest.toFile()).path("run").asText();
  }

  private static Set<String> namesIn(Path directory) throws IOException {
    try (Stream<Path> entries = Files.list(directory)) {
      return entries.map(entry -> entry.getFileName().toString()).collect(Collectors.toSet());
    }
  }

  private static Set<String> everythingBelow(Path directory) throws IOException {
    try (Stream<Path> entries = Files.walk(directory)) {
      return entries
          .filter(entry -> !entry.equals(directory))
          .map(entry -> directory.relativize(entry).toString())
          .collect(Collectors.toCollection(TreeSet::new));
    }
  }

  private static final class Died extends RuntimeException {}
}
