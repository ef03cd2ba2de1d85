package leadline.lake;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.apache.iceberg.exceptions.ValidationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a disk or a clock does to a lake is no damage: other words, other advice. */
class DamageTest {

  private static final Path LAKE = Path.of("lake");

  private static String words(Throwable fault) {
    return Damage.in(LAKE, fault).map(Throwable::getMessage).orElse("none");
  }

  @ParameterizedTest
  @CsvSource({
    "No space left on device, make room",
    "Disk quota exceeded, make room",
    "[SQLITE_FULL] Insertion failed because database is full, make room",
    "/mnt/lake/writer.lock: Read-only file system, mount it for writing",
    "[SQLITE_READONLY] Attempt to write a readonly database, mount it for writing"
  })
  void aDiskThatTakesNoMore(String said, String advice) {
    String words = words(new Error("task failed", new IOException(said)));

    assertTrue(words.contains(said) && words.contains(advice), words);
    assertTrue(!words.contains("backup"), words);
  }

  @Test
  void aClockThatWasSetBack() {
    String words =
        words(
            new ValidationException(
                "Invalid update timestamp %s: before last snapshot log entry at %s", 1, 70_000));

    assertTrue(words.contains("set the clock right"), words);
  }

  @Test
  void aFaultOfTheProgramIsNone() {
    assertTrue(Damage.in(LAKE, new IllegalStateException("a slip")).equals(Optional.empty()));
  }
}
