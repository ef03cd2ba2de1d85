package leadline.golden;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadline.fleet.Catalogue;
import leadline.fleet.ItemExchange;
import leadline.job.JobRunner;
import leadline.job.StepOutcome;
import leadline.lake.Engine;
import leadline.publish.Boundary;
import leadline.settings.Job;
import leadline.settings.Step;

/** Runs steps on a lake, on the one engine that all tests share. */
public final class Pipeline {

  private static final Engine ENGINE = new Engine();
  private static final Clock READING = Clock.fixed(GoldenFleet.READ_ON, ZoneOffset.UTC);

  private final Path lake;
  private final Catalogue catalogue;
  private final Boundary boundary;
  private final Clock clock;

  public Pipeline(Path lake) {
    this(lake, GoldenFleet.catalogue());
  }

  public Pipeline(Path lake, Catalogue catalogue) {
    this(lake, catalogue, Boundary.UNWATCHED, READING);
  }

  public Pipeline(Path lake, Boundary boundary) {
    this(lake, boundary, READING);
  }

  public Pipeline(Path lake, Boundary boundary, Clock clock) {
    this(lake, GoldenFleet.catalogue(), boundary, clock);
  }

  private Pipeline(Path lake, Catalogue catalogue, Boundary boundary, Clock clock) {
    this.lake = lake;
    this.catalogue = catalogue;
    this.boundary = boundary;
    this.clock = clock;
  }

  public List<StepOutcome> run(Step... steps) {
    return new JobRunner(ENGINE, clock, GoldenFleet.SHARED, words -> {}, boundary)
        .run(
            new Job(
                lake,
                catalogue,
                Job.DEFAULT_HOURS_TOLERANCE,
                ItemExchange.NONE,
                Duration.ZERO,
                List.of(steps)),
            outcome -> {});
  }

  public StepOutcome.Ingested ingest(Path inbox) {
    return (StepOutcome.Ingested) run(new Step.Ingest(inbox)).get(0);
  }

  public StepOutcome.Computed compute() {
    return (StepOutcome.Computed) run(new Step.Compute(GoldenFleet.MONTH, Optional.empty())).get(0);
  }

  public StepOutcome.Published publish(Path out) {
    return (StepOutcome.Published)
        run(new Step.Publish(GoldenFleet.MONTH, out, new Step.RunChoice.Newest())).get(0);
  }

  /** All golden inboxes in their order, then the month's tables, then its files. */
  public List<StepOutcome> golden(Path out) {
    List<Step> steps = new ArrayList<>();
    GoldenFleet.INBOXES.forEach(
        inbox -> steps.add(new Step.Ingest(GoldenFleet.EXPORTS.resolve(inbox))));
    steps.add(new Step.Compute(GoldenFleet.MONTH, Optional.empty()));
    steps.add(new Step.Publish(GoldenFleet.MONTH, out, new Step.RunChoice.Newest()));
    return run(steps.toArray(Step[]::new));
  }
}
