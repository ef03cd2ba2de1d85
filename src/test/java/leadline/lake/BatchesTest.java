package leadline.lake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import leadline.origin.FileDigest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BatchesTest {

  private static final Instant NOON = Instant.parse("2025-02-01T12:00:00Z");
  private static final LoadedFile FILE =
      new LoadedFile("hours.csv", FileDigest.of(new byte[] {1}), 3, 2, 1, 0);

  @TempDir Path folder;

  @Test
  void anEmptyLakeHasNoBatch() {
    try (Lake lake = Lake.openOrCreate(folder.resolve("a lake"))) {
      assertEquals(List.of(), lake.batches().committed());
      assertTrue(lake.batches().knownAt(NOON).isEmpty());
    }
  }

  @Test
  void aCommittedBatchIsThereAfterReopening() {
    Path path = folder.resolve("a lake");
    Batch written;
    try (Lake lake = Lake.openOrCreate(path)) {
      written = lake.batches().commit("one", NOON, "0.1.0", List.of(FILE), Delivery.UNTOLD);
    }
    try (Lake lake = Lake.open(path)) {
      assertEquals(List.of(written), lake.batches().committed());
      assertTrue(lake.batches().loadedFiles().contains(FILE.digest()));
    }
  }

  @Test
  void knownAtCutsTheListAndSurvivesAClockThatGoesBack() {
    try (Lake lake = Lake.openOrCreate(folder.resolve("lake"))) {
      Batch first = lake.batches().commit("one", NOON, "0.1.0", List.of(FILE), Delivery.UNTOLD);
      Batch second =
          lake.batches().commit("two", NOON.minusSeconds(60), "0.1.0", List.of(), Delivery.UNTOLD);
      assertTrue(second.committedAt().isAfter(first.committedAt()));
      assertEquals(
          List.of(first), lake.batches().knownAt(first.committedAt()).orElseThrow().batches());
      assertEquals(
          List.of(first, second),
          lake.batches().knownAt(NOON.plusSeconds(1)).orElseThrow().batches());
    }
  }
}
