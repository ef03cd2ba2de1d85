package leadline.job;

import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import leadline.intake.Inbox;
import leadline.lake.Batch;
import leadline.lake.Damage;
import leadline.lake.Engine;
import leadline.lake.Lake;
import leadline.lake.LakeException;
import leadline.publish.Boundary;
import leadline.settings.Job;
import leadline.settings.SharedFolder;
import leadline.settings.Source;
import leadline.settings.SourceFile;
import leadline.settings.Step;

/** Runs the steps of a job in order, on one engine. */
public final class JobRunner {

  private final Engine engine;
  private final Clock clock;
  private final SharedFolder shared;
  private final List<String> cautions;
  private final Consumer<String> tell;
  private final Boundary boundary;

  /**
   * @param shared the cautions that every published month carries, and the schemas
   * @param tell is told of progress and waits
   */
  public JobRunner(
      Engine engine, Clock clock, SharedFolder shared, Consumer<String> tell, Boundary boundary) {
    this.engine = engine;
    this.clock = clock;
    this.shared = shared;
    this.cautions = shared.cautions();
    this.tell = tell;
    this.boundary = boundary;
  }

  /** Runs all steps; {@code done} is told of each as it ends. */
  public List<StepOutcome> run(Job job, Consumer<StepOutcome> done) {
    List<StepOutcome> outcomes = new ArrayList<>();
    for (Step step : job.steps()) {
      StepOutcome outcome = onSoundLake(step, job);
      done.accept(outcome);
      outcomes.add(outcome);
    }
    return outcomes;
  }

  /**
   * @throws LakeException where a file of the lake cannot be used
   */
  private StepOutcome onSoundLake(Step step, Job job) {
    try {
      return run(step, job);
    } catch (Throwable fault) { // Spark's own is checked and not declared; a full disk is an Error
      Optional<LakeException> damage = Damage.in(job.lake(), fault);
      if (damage.isPresent()) {
        throw damage.get();
      }
      throw fault;
    }
  }

  private StepOutcome run(Step step, Job job) {
    if (step instanceof Step.Ingest ingest) {
      return ingest(ingest.inbox(), job);
    } else if (step instanceof Step.ReadAgain again) {
      return readAgain(again, job);
    } else if (step instanceof Step.Withdraw withdraw) {
      return withdraw(withdraw, job);
    } else if (step instanceof Step.Compute compute) {
      return compute(compute, job);
    } else if (step instanceof Step.Publish publish) {
      return publish(publish, job);
    } else if (step instanceof Step.Tidy tidy) {
      return tidy(tidy, job);
    }
    throw new IllegalStateException("a step of an unknown kind: " + step);
  }

  private StepOutcome ingest(Path folder, Job job) {
    tell.accept("ingest " + folder);
    Inbox inbox = Inbox.list(folder);
    Source source = SourceFile.read(folder, shared);
    try (Lake lake = Lake.openOrCreate(job.lake())) {
      Ingest ingest = new Ingest(taking(lake, job));
      return lake.writing(job.lockWait(), tell, () -> ingest.from(folder, inbox, source, engine));
    }
  }

  private StepOutcome readAgain(Step.ReadAgain step, Job job) {
    tell.accept("ingest again " + step.batch());
    try (Lake lake = Lake.open(job.lake())) {
      return lake.writing(job.lockWait(), tell, () -> readAgain(step, job, lake));
    }
  }

  private StepOutcome readAgain(Step.ReadAgain step, Job job, Lake lake) {
    Batch before = CountingBatch.named(step.batch(), lake);
    Path folder = step.inbox().orElseGet(() -> inboxOf(before));
    return new ReadAgain(taking(lake, job), before)
        .from(folder, Inbox.list(folder), SourceFile.read(folder, shared), engine);
  }

  private static Path inboxOf(Batch batch) {
    if (batch.delivery().inbox().isEmpty()) {
      throw new UnusableRequest(
          "The lake does not know where the files of batch %s lie: name their folder as the inbox."
              .formatted(batch.id()));
    }
    return Path.of(batch.delivery().inbox());
  }

  private Taking taking(Lake lake, Job job) {
    return new Taking(lake, job.catalogue(), clock, boundary);
  }

  private StepOutcome withdraw(Step.Withdraw step, Job job) {
    tell.accept("withdraw " + step.batch());
    try (Lake lake = Lake.open(job.lake())) {
      Withdraw withdraw = new Withdraw(lake, clock, boundary);
      return lake.writing(job.lockWait(), tell, () -> withdraw.batch(step.batch()));
    }
  }

  private StepOutcome compute(Step.Compute step, Job job) {
    tell.accept("compute " + step.month());
    try (Lake lake = Lake.open(job.lake())) {
      Rules rules = new Rules(job.catalogue(), job.hoursTolerance(), job.exchange());
      Compute compute = new Compute(lake, rules, clock, boundary);
      return lake.writing(
          job.lockWait(), tell, () -> compute.month(step.month(), step.knownAt(), engine));
    }
  }

  private StepOutcome publish(Step.Publish step, Job job) {
    tell.accept("publish " + step.month() + " into " + step.out());
    try (Lake lake = Lake.open(job.lake())) {
      return new Publish(lake, job.catalogue(), cautions, clock, boundary).month(step);
    }
  }

  private StepOutcome tidy(Step.Tidy step, Job job) {
    tell.accept("tidy " + job.lake());
    try (Lake lake = Lake.open(job.lake())) {
      Tidy tidy = new Tidy(lake, clock, boundary);
      return lake.writing(job.lockWait(), tell, () -> tidy.by(step, engine));
    }
  }
}
