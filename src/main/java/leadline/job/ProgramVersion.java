package leadline.job;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/** The version of this program. */
public final class ProgramVersion {

  private ProgramVersion() {}

  public static String current() {
    try (InputStream text =
        Objects.requireNonNull(
            ProgramVersion.class.getResourceAsStream("/leadline/version.txt"),
            "the build writes the version")) {
      return new String(text.readAllBytes(), StandardCharsets.UTF_8).strip();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read the program's version", e);
    }
  }
}
