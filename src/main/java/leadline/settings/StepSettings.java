package leadline.settings;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Reads the steps of a job file: each does what the command of its name does. */
record StepSettings(SettingMeanings meanings) {

  /** The step; none where it, or something in it, is already known to be wrong. */
  Optional<Step> read(Setting step) {
    return switch (step.at("step").text().orElse("")) {
      case "ingest" -> ingest(step);
      case "withdraw" -> step.at("batch").text().map(Step.Withdraw::new);
      case "compute" -> compute(step);
      case "publish" -> publish(step);
      case "tidy" -> Optional.of(tidy(step));
      default -> Optional.empty();
    };
  }

  private Optional<Step> ingest(Setting step) {
    Optional<Path> inbox = meanings.path(step.at("inbox"));
    Optional<Step> again = step.at("again").text().map(batch -> new Step.ReadAgain(batch, inbox));
    return again.or(() -> inbox.map(Step.Ingest::new));
  }

  private Optional<Step> compute(Setting step) {
    Optional<Instant> knownAt = meanings.moment(step.at("known_at"));
    return meanings.month(step.at("month")).map(month -> new Step.Compute(month, knownAt));
  }

  private Optional<Step> publish(Setting step) {
    Optional<Path> out = meanings.path(step.at("out"));
    Step.RunChoice choice =
        meanings
            .moment(step.at("known_at"))
            .<Step.RunChoice>map(Step.RunChoice.KnownAt::new)
            .orElseGet(Step.RunChoice.Newest::new);
    return meanings
        .month(step.at("month"))
        .flatMap(month -> out.map(folder -> new Step.Publish(month, folder, choice)));
  }

  private Step tidy(Setting step) {
    Duration olderThan =
        ShortTime.read(step.at("older_than").text().orElse(Step.Tidy.DEFAULT_OLDER_THAN));
    int runsKept =
        step.at("keep_runs")
            .wholeNumber()
            .map(Math::toIntExact)
            .orElse(Step.Tidy.DEFAULT_RUNS_KEPT);
    List<Path> publications =
        step.at("published").items().stream()
            .flatMap(folder -> meanings.path(folder).stream())
            .toList();
    return new Step.Tidy(olderThan, runsKept, publications);
  }
}
