package leadline.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import leadline.settings.SharedFolder;

/** What the program finds around it: the clock, the environment, its own shared folder. */
record Surroundings(Clock clock, Map<String, String> environment, SharedFolder shared) {

  /** The launcher says where the program lives; without it, the working folder is taken. */
  private static final String HOME_PROPERTY = "leadline.home";

  static Surroundings ofThisProcess(Clock clock) {
    Path home = Path.of(System.getProperty(HOME_PROPERTY, ""));
    return new Surroundings(
        clock, System.getenv(), new SharedFolder(home.toAbsolutePath().resolve("shared")));
  }
}
