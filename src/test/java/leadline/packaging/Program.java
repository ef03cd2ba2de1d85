package leadline.packaging;

import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** A program about to be run, with an environment that holds only what is said here. */
final class Program {

  private final ProcessBuilder process;
  private Duration patience = Duration.ofMinutes(5);

  private Program(List<String> command) {
    process = new ProcessBuilder(command);
    process.environment().clear();
  }

  /** The Java that runs this test. */
  static Program java(String... arguments) {
    return new Program(
        Stream.concat(
                Stream.of(Path.of(System.getProperty("java.home"), "bin/java").toString()),
                Stream.of(arguments))
            .toList());
  }

  /** A command of the system, found on this test's search path. */
  static Program system(String command, String... arguments) {
    return new Program(Stream.concat(Stream.of(command), Stream.of(arguments)).toList())
        .where("PATH", System.getenv("PATH"));
  }

  /** The packaged program, as the launcher starts it. */
  static Program leadline(String... arguments) {
    return java(
        Stream.concat(
                Stream.of(
                    "@" + Build.HOME.resolve("jobs/java-small.options"),
                    "-Dleadline.home=" + Build.HOME,
                    "-Dleadline.terminal=true",
                    "-cp",
                    Build.JAR.toString(),
                    "leadline.cli.Main"),
                Stream.of(arguments))
            .toArray(String[]::new));
  }

  /** A launcher, found by its path, with this test's own Java and search path. */
  static Program launcher(Path script, String... arguments) {
    return new Program(Stream.concat(Stream.of(script.toString()), Stream.of(arguments)).toList())
        .where("PATH", System.getenv("PATH"))
        .where("JAVA_HOME", System.getProperty("java.home"));
  }

  Program in(Path folder) {
    process.directory(folder.toFile());
    return this;
  }

  Program where(String variable, String value) {
    process.environment().put(variable, value);
    return this;
  }

  Program where(Map<String, String> variables) {
    process.environment().putAll(variables);
    return this;
  }

  Program withoutVariable(String variable) {
    process.environment().remove(variable);
    return this;
  }

  Program within(Duration longest) {
    patience = longest;
    return this;
  }

  /** Runs to the end. */
  Finished run() {
    try {
      Path out = Files.createTempFile("out", ".txt");
      Path err = Files.createTempFile("err", ".txt");
      try {
        Process running = process.redirectOutput(out.toFile()).redirectError(err.toFile()).start();
        running.getOutputStream().close();
        if (!running.waitFor(patience.toSeconds(), TimeUnit.SECONDS)) {
          running.destroyForcibly();
          fail("still running after " + patience.toSeconds() + " s: " + process.command());
        }
        return new Finished(running.exitValue(), Files.readAllLines(out), Files.readAllLines(err));
      } finally {
        Files.delete(out);
        Files.delete(err);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      throw new IllegalStateException("interrupted", e);
    }
  }
}
