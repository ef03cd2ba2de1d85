package leadline.cli;

import java.time.Duration;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** The option of the commands that write to a lake. */
final class WaitOption {

  @Option(
      names = "--wait",
      paramLabel = "SECONDS",
      defaultValue = "60",
      converter = Seconds.class,
      description =
          "How long to wait while another job writes to the lake; ${DEFAULT-VALUE} if not given.")
  private Duration patience;

  Duration patience() {
    return patience;
  }

  /** Reads whole seconds, up to a day. */
  static final class Seconds implements ITypeConverter<Duration> {
    @Override
    public Duration convert(String text) {
      if (!text.matches("[0-9]{1,5}") || Integer.parseInt(text) > Duration.ofDays(1).toSeconds()) {
        throw new TypeConversionException(
            "'" + text + "' is not a whole number of seconds from 0 to 86400");
      }
      return Duration.ofSeconds(Integer.parseInt(text));
    }
  }
}
