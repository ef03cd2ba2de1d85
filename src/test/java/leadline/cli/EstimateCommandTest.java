package leadline.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class EstimateCommandTest {

  @TempDir private Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @Test
  void optionsStandAboveTheSettingsFile() throws IOException {
    Path data = Files.writeString(folder.resolve("spares.csv"), "mean\n2.7\n");
    Path settings = Files.writeString(folder.resolve("settings.json"), "{\"assurance\": 0.95}");
    assertEquals(0, run("spares", data.toString(), "--settings", settings.toString()));
    assertTrue(out.toString().contains("\"spares.hold\" : [ 6.0 ]"), out.toString());
    out.getBuffer().setLength(0);
    assertEquals(
        0, run("spares", data.toString(), "--settings", settings.toString(), "--assurance", "0.9"));
    assertTrue(out.toString().contains("\"spares.hold\" : [ 5.0 ]"), out.toString());
    assertEquals("", err.toString());
  }

  @Test
  void unusableDataIsOneSentenceAndExitCodeTwo() throws IOException {
    Path data = Files.writeString(folder.resolve("data.csv"), "mean\n-1\n");
    assertEquals(2, run("spares", data.toString()));
    assertEquals(data + ", line 2, column mean: must be more than 0: -1.\n", err.toString());
    assertEquals("", out.toString());
  }

  private int run(String method, String... arguments) {
    String[] all = new String[arguments.length + 2];
    all[0] = "estimate";
    all[1] = method;
    System.arraycopy(arguments, 0, all, 2, arguments.length);
    Console console =
        new Console(
            new PrintWriter(out, true), new PrintWriter(err, true), Console.Reader.SCHEDULER);
    return Main.run(console, Surroundings.ofThisProcess(Clock.systemUTC()), all);
  }
}
