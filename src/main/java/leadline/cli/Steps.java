package leadline.cli;

import java.util.List;
import java.util.function.Consumer;
import leadline.job.JobRunner;
import leadline.job.StepOutcome;
import leadline.job.StepReport;
import leadline.lake.Engine;
import leadline.publish.Boundary;
import leadline.settings.Job;

/** Runs a job and reports it. */
final class Steps {

  private final Console console;
  private final Surroundings surroundings;
  private final Job job;

  Steps(LeadlineCommand leadline, Job job) {
    this.console = leadline.console;
    this.surroundings = leadline.surroundings;
    this.job = job;
  }

  ExitCode inWords() {
    return exitCode(run(this::print));
  }

  ExitCode inJson() {
    List<StepOutcome> outcomes = run(outcome -> warn(StepReport.of(outcome)));
    console.out().println(StepReport.json(outcomes));
    return exitCode(outcomes);
  }

  ExitCode inWordsThenJson() {
    List<StepOutcome> outcomes = run(this::print);
    console.out().println(StepReport.json(outcomes));
    return exitCode(outcomes);
  }

  private List<StepOutcome> run(Consumer<StepOutcome> done) {
    try (Engine engine = new Engine()) {
      return new JobRunner(
              engine,
              surroundings.clock(),
              surroundings.shared(),
              console::tell,
              Boundary.UNWATCHED)
          .run(job, done);
    }
  }

  private void print(StepOutcome outcome) {
    StepReport report = StepReport.of(outcome);
    warn(report);
    report.words().forEach(console.out()::println);
  }

  private void warn(StepReport report) {
    report.warnings().forEach(console::warn);
  }

  private static ExitCode exitCode(List<StepOutcome> outcomes) {
    boolean unusable =
        outcomes.stream()
            .anyMatch(
                outcome ->
                    outcome instanceof StepOutcome.Ingested ingested
                        && !ingested.unusable().isEmpty());
    return unusable ? ExitCode.UNUSABLE_INPUT : ExitCode.DONE;
  }
}
