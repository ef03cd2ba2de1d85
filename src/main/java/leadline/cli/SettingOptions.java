package leadline.cli;

import java.util.List;
import java.util.stream.Stream;
import leadline.estimate.EstimateSettings;
import leadline.estimate.Methods;
import leadline.estimate.Setting;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** Makes each setting of the estimators an option of its own, and lists the estimators. */
final class SettingOptions implements CommandLine.IModelTransformer {

  @Override
  public CommandSpec transform(CommandSpec spec) {
    for (Setting setting : Setting.values()) {
      spec.addOption(
          OptionSpec.builder(setting.option())
              .paramLabel(setting.placeholder())
              .description(setting.meaning())
              .type(String.class)
              .build());
    }
    spec.usageMessage().footer(withMethods(spec.usageMessage().footer()));
    return spec;
  }

  private static String[] withMethods(String... footer) {
    return Stream.of(
            Stream.of("Methods and the columns that they read:"),
            Methods.lines().stream(),
            Stream.of(""),
            Stream.of(footer))
        .flatMap(lines -> lines)
        .toArray(String[]::new);
  }

  /** The settings with those that the command line names instead. */
  static EstimateSettings over(EstimateSettings settings, CommandLine.ParseResult parsed) {
    EstimateSettings result = settings;
    for (Setting setting : Setting.values()) {
      if (parsed.hasMatchedOption(setting.option())) {
        String values = parsed.matchedOptionValue(setting.option(), "");
        result = result.with(setting, List.of(values.split(",", -1)));
      }
    }
    return result;
  }
}
