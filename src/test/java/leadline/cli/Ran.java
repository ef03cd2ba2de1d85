package leadline.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;

/** How a command ended and what it wrote. */
record Ran(int exit, String out, String err) {

  private static final ObjectMapper JSON = new ObjectMapper();

  /** This, if it was done and had nothing to mend. */
  Ran clean() {
    return exitedWith(0, "");
  }

  /** This, if it exited so and wrote exactly these lines to standard error. */
  Ran exitedWith(int code, String... errorLines) {
    assertEquals(String.join("\n", errorLines), err.strip());
    assertEquals(code, exit);
    return this;
  }

  List<String> errorLines() {
    return err.lines().toList();
  }

  /** The step that was done, where the output is one line of JSON and nothing else. */
  JsonNode step() {
    assertEquals(1, out.lines().count(), out);
    return lastLine().at("/steps/0");
  }

  /** The last line of the output, as JSON. */
  JsonNode lastLine() {
    List<String> lines = out.lines().toList();
    try {
      return JSON.readTree(lines.get(lines.size() - 1));
    } catch (JsonProcessingException e) {
      throw new AssertionError("not JSON: " + out, e);
    }
  }
}
