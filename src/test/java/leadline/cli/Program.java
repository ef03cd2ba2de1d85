package leadline.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Map;
import leadline.lake.RunningEngine;
import leadline.settings.SharedFolder;

/** The program in this process, with captured output and a clock that starts in February 2025. */
final class Program {

  static final Path HOME = Path.of(System.getProperty("leadline.home", ".")).toAbsolutePath();
  static final Instant NOW = Instant.parse("2025-02-01T06:00:00Z");

  private final Clock clock = new SecondByCall();
  private final Console.Reader reader;
  private final Map<String, String> environment;

  private Program(Console.Reader reader, Map<String, String> environment) {
    this.reader = reader;
    this.environment = environment;
  }

  static Program forScheduler() {
    return new Program(Console.Reader.SCHEDULER, Map.of());
  }

  static Program forScheduler(Map<String, String> environment) {
    return new Program(Console.Reader.SCHEDULER, environment);
  }

  static Program forPerson() {
    return new Program(Console.Reader.PERSON, Map.of());
  }

  /** Runs a command; arguments of any kind are given as their text. */
  Ran run(Object... arguments) {
    RunningEngine.start();
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    String[] texts = new String[arguments.length];
    for (int i = 0; i < texts.length; i++) {
      texts[i] = arguments[i].toString();
    }
    int exit =
        Main.run(
            new Console(new PrintWriter(out), new PrintWriter(err), reader),
            new Surroundings(clock, environment, new SharedFolder(HOME.resolve("shared"))),
            texts);
    return new Ran(exit, out.toString(), err.toString());
  }

  /** Never tells the same time twice, so that what comes later is dated later. */
  private static final class SecondByCall extends Clock {
    private Instant now = NOW;

    @Override
    public Instant instant() {
      now = now.plus(Duration.ofSeconds(1));
      return now;
    }

    @Override
    public ZoneId getZone() {
      return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
      return this;
    }
  }
}
