package leadline.cli;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Stream;
import leadline.fleet.Written;
import leadline.sample.PlanSetting;
import leadline.sample.RecordError;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;

/** Lists what can be set in a fleet, each with its usual share and what it is a share of. */
final class SampleSettings implements CommandLine.IModelTransformer {

  @Override
  public CommandSpec transform(CommandSpec spec) {
    String[] description = spec.usageMessage().description();
    Stream<String> errors =
        Arrays.stream(RecordError.values())
            .map(error -> line(error, error.usual(), "of " + error.counted()));
    Stream<String> settings =
        Arrays.stream(PlanSetting.values())
            .map(setting -> line(setting, setting.usual(), setting.meaning()));
    spec.usageMessage()
        .description(
            Stream.of(Arrays.stream(description), errors, settings)
                .flatMap(lines -> lines)
                .toArray(String[]::new));
    return spec;
  }

  private static String line(Written name, double usual, String meaning) {
    String share =
        new BigDecimal(usual).round(new MathContext(3)).stripTrailingZeros().toPlainString();
    return String.format(Locale.ROOT, "  %-20s %-6s %s", name.word(), share, meaning);
  }
}
