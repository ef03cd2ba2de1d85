package leadline.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class EstimateCommandTest {

  @TempDir private Path folder;

  @Test
  void optionsStandAboveTheSettingsFile() throws IOException {
    Path data = Files.writeString(folder.resolve("spares.csv"), "mean\n2.7\n");
    Path settings = Files.writeString(folder.resolve("settings.json"), "{\"assurance\": 0.95}");
    assertHolds("6.0", "spares", data, "--settings", settings);
    assertHolds("5.0", "spares", data, "--settings", settings, "--assurance", "0.9");
  }

  private static void assertHolds(String spares, Object... arguments) {
    Object[] all = new Object[arguments.length + 1];
    all[0] = "estimate";
    System.arraycopy(arguments, 0, all, 1, arguments.length);
    String out = Program.forScheduler().run(all).clean().out();
    assertTrue(out.contains("\"spares.hold\" : [ " + spares + " ]"), out);
  }

  @Test
  void unusableDataIsOneSentenceAndExitCodeTwo() throws IOException {
    Path data = Files.writeString(folder.resolve("data.csv"), "mean\n-1\n");
    Ran ran = Program.forScheduler().run("estimate", "spares", data);
    assertEquals(new Ran(2, "", data + ", line 2, column mean: must be more than 0: -1.\n"), ran);
  }
}
