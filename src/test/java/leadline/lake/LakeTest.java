package leadline.lake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LakeTest {

  private static final Duration AT_ONCE = Duration.ZERO;

  @TempDir Path folder;

  @Test
  void aNewerFormatIsRefused() throws IOException {
    Path lake = folder.resolve("lake");
    Lake.openOrCreate(lake).close();
    Files.writeString(lake.resolve("format"), "2\n");
    LakeException refusal = assertThrows(LakeException.class, () -> Lake.open(lake));
    assertTrue(message(refusal).contains("format 2"), refusal::toString);
  }

  @Test
  void aFolderOfOtherThingsIsNoLake() throws IOException {
    Files.writeString(folder.resolve("letters.txt"), "dear owner");
    assertThrows(LakeException.class, () -> Lake.openOrCreate(folder));
    assertThrows(LakeException.class, () -> Lake.open(folder));
  }

  @Test
  void aSecondWriterWaitsIsToldAndGivesUp() {
    try (Lake lake = Lake.openOrCreate(folder.resolve("lake"));
        Lake same = Lake.openOrCreate(folder.resolve("lake"))) {
      List<String> told = new ArrayList<>();
      String outcome =
          lake.writing(
              AT_ONCE,
              told::add,
              () -> {
                assertThrows(
                    LakeInUseException.class,
                    () -> same.writing(Duration.ofMillis(300), told::add, () -> "written"));
                return "first";
              });
      assertEquals("first", outcome);
      assertEquals(1, told.size(), told::toString);
      assertEquals("now", same.writing(AT_ONCE, told::add, () -> "now"));
    }
  }

  @Test
  void theLockIsFreeAfterWorkThatFailed() {
    try (Lake lake = Lake.openOrCreate(folder.resolve("lake"))) {
      assertThrows(
          IllegalStateException.class,
          () ->
              lake.writing(
                  AT_ONCE,
                  words -> {},
                  () -> {
                    throw new IllegalStateException("as if it died");
                  }));
      assertEquals("free", lake.writing(AT_ONCE, words -> {}, () -> "free"));
    }
  }

  private static String message(Throwable fault) {
    return String.valueOf(fault.getMessage());
  }
}
