package leadline.packaging;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The short form of {@code src/bench/kill}. */
class KilledIT {

  @TempDir private Path folder;

  @Test
  void whateverMomentTheProgramIsKilledAt() throws IOException, InterruptedException {
    Map<String, Integer> killed = Kills.of(folder, 20, 5, 1);

    assertEquals(20, killed.values().stream().mapToInt(Integer::intValue).sum(), killed::toString);
  }
}
