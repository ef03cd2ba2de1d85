package leadline.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.ProcessBuilder.Redirect;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import leadline.stats.Life;

/**
 * R's fit of the same lives.
 *
 * @param fromRows processor time of a fit from rows, in microseconds
 * @param alone processor time of the fitting alone, in microseconds
 * @param shape its estimate
 * @param scale its estimate, in hours
 */
record RSurvival(double fromRows, double alone, double shape, double scale) {

  /** Runs R in a process of its own. */
  static RSurvival of(List<Life> lives, Path script) {
    try {
      Path rows = Files.createTempFile("lives", ".csv");
      Files.write(rows, rows(lives).toList());
      Process process =
          new ProcessBuilder("Rscript", "--vanilla", script.toString(), rows.toString())
              .redirectError(Redirect.INHERIT)
              .start();
      String printed =
          new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
      Files.delete(rows);
      double[] figures =
          Stream.of(printed.split(" ", -1)).mapToDouble(Double::parseDouble).toArray();
      return new RSurvival(figures[0], figures[1], figures[2], figures[3]);
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  private static Stream<String> rows(List<Life> lives) {
    return Stream.concat(
        Stream.of("lower,upper"),
        lives.stream()
            .map(
                life ->
                    life.lower()
                        + ","
                        + (life.upper() == Double.POSITIVE_INFINITY ? "Inf" : life.upper())));
  }

  /** The faster of the two at each. */
  RSurvival orFaster(RSurvival other) {
    return new RSurvival(
        Math.min(fromRows, other.fromRows), Math.min(alone, other.alone), shape, scale);
  }
}
