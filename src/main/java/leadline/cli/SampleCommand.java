package leadline.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import leadline.fleet.Written;
import leadline.sample.ErrorRates;
import leadline.sample.FleetPlan;
import leadline.sample.FleetWriter;
import leadline.sample.PlainLayoutWriter;
import leadline.sample.PlanSetting;
import leadline.sample.ReadingHabit;
import leadline.sample.RecordError;
import leadline.sample.SampleFleet;
import leadline.sample.SampleVessel;
import leadline.sample.TruthWriter;
import leadline.settings.CatalogueFile;
import leadline.settings.SharedFolder;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** The invented fleet's exports. */
@Command(
    name = "sample",
    description = {
      "Writes the exports of an invented fleet of any size.",
      "",
      "They have the errors that ships make, and end with 2024. The same numbers give the same"
          + " bytes, and a vessel is the same in a fleet of any size. What really happened goes to a folder of its own: the life of"
          + " every part, what sets each vessel apart, and every error planted.",
      "",
      "Names to set and their usual shares:",
    },
    modelTransformer = SampleSettings.class,
    footer = {
      "  leadline sample --out exports --vessels 24 --years 6 --seed 1",
      "  leadline sample --out exports --vessels 200 --years 10 --seed 1 \\",
      "    --truth hidden --readings daily --clean --set stale-month=0.02"
    })
final class SampleCommand implements Callable<Integer> {

  @ParentCommand private LeadlineCommand leadline;
  @Spec private CommandSpec spec = CommandSpec.create();

  @Option(
      names = "--out",
      required = true,
      paramLabel = "DIR",
      description = "The folder for the exports: new, or empty.")
  private Path out;

  @Option(
      names = "--vessels",
      required = true,
      paramLabel = "N",
      description = "How many vessels, 1 to 10000.")
  private int vessels;

  @Option(
      names = "--years",
      required = true,
      paramLabel = "Y",
      description = "How many years of records, 1 to 40.")
  private int years;

  @Option(
      names = "--seed",
      required = true,
      paramLabel = "S",
      description = "A whole number: another number, another fleet.")
  private long seed;

  @Option(
      names = "--truth",
      paramLabel = "DIR",
      description = "The folder for what really happened; `truth` beside --out if not given.")
  private @Nullable Path truth;

  @Option(
      names = "--readings",
      paramLabel = "HABIT",
      defaultValue = "mixed",
      description = "How hours are logged: daily, weekly, monthly or mixed; mixed if not given.")
  private String readings;

  @Option(names = "--clean", description = "Plant no errors but those named by --set.")
  private boolean clean;

  @Option(
      names = "--set",
      paramLabel = "NAME=SHARE",
      description = "Another share than usual, by a name above; as often as wanted.")
  private Map<String, Double> settings = new LinkedHashMap<>();

  @Override
  public Integer call() throws IOException {
    require(vessels >= 1 && vessels <= 10_000, "A fleet has 1 to 10000 vessels, not " + vessels);
    require(years >= 1 && years <= 40, "Records are of 1 to 40 years, not " + years);
    Path exports = out.toAbsolutePath().normalize();
    Path hidden =
        Optional.ofNullable(truth)
            .orElseGet(() -> exports.resolveSibling("truth"))
            .toAbsolutePath()
            .normalize();
    require(
        !hidden.startsWith(exports) && !exports.startsWith(hidden),
        "The truth does not belong among the exports; name another folder for it.");
    requireEmpty(exports);
    requireEmpty(hidden);
    SampleFleet fleet = new SampleFleet(plan(), seed);
    try (FleetWriter records = new PlainLayoutWriter(exports);
        FleetWriter behind = new TruthWriter(hidden)) {
      for (int number = 1; number <= vessels; number++) {
        SampleVessel vessel = fleet.vessel(number);
        records.write(vessel);
        behind.write(vessel);
      }
    }
    leadline
        .console
        .out()
        .printf(
            "Wrote the exports of %s to %s, and what really happened to %s.%n",
            vessels == 1 ? "1 vessel" : vessels + " vessels", exports, hidden);
    return ExitCode.DONE.number();
  }

  private FleetPlan plan() {
    SharedFolder shared = leadline.surroundings.shared();
    FleetPlan plan = FleetPlan.usual(CatalogueFile.read(shared.catalogue(), shared), years);
    if (!readings.equals("mixed")) {
      plan = plan.withReadings(habit());
    }
    if (clean) {
      plan = plan.withErrors(ErrorRates.NONE);
    }
    for (Map.Entry<String, Double> setting : settings.entrySet()) {
      try {
        plan = with(plan, setting.getKey(), setting.getValue());
      } catch (IllegalArgumentException impossible) {
        throw misuse("--set " + setting.getKey() + ": " + impossible.getMessage());
      }
    }
    return plan;
  }

  private ReadingHabit habit() {
    return Written.read(ReadingHabit.class, readings)
        .orElseThrow(
            () -> misuse("--readings is daily, weekly, monthly or mixed, not " + readings));
  }

  private FleetPlan with(FleetPlan plan, String name, double value) {
    Optional<RecordError> error = Written.read(RecordError.class, name);
    if (error.isPresent()) {
      return plan.withErrors(plan.errors().with(error.get(), value));
    }
    return PlanSetting.named(name)
        .orElseThrow(() -> misuse("There is nothing to set by the name '" + name + "'."))
        .in(plan, value);
  }

  private void requireEmpty(Path folder) throws IOException {
    if (Files.isDirectory(folder)) {
      try (Stream<Path> files = Files.list(folder)) {
        require(files.findAny().isEmpty(), folder + " is not empty; name a new or empty folder.");
      }
    } else {
      require(!Files.exists(folder), folder + " is not a folder; name a new or empty one.");
    }
  }

  private void require(boolean sound, String sentence) {
    if (!sound) {
      throw misuse(sentence);
    }
  }

  private ParameterException misuse(String sentence) {
    return new ParameterException(spec.commandLine(), sentence);
  }
}
