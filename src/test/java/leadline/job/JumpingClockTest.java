package leadline.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import leadline.golden.Pipeline;
import leadline.lake.Batch;
import leadline.lake.Lake;
import leadline.lake.Run;
import leadline.publish.Boundary;
import leadline.quantity.ReportMonth;
import leadline.settings.Step;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The machine's clock jumps by days, forward and back, between any two looks at it. */
@Tag("long")
class JumpingClockTest {

  private static final ReportMonth MONTH = ReportMonth.parse("2024-12");
  private static final int ROUNDS = 6;

  @TempDir Path folder;

  @Test
  void theOrderOfBatchesAndRunsIsThatInWhichTheyCame() throws IOException {
    Pipeline pipeline = new Pipeline(folder.resolve("lake"), Boundary.UNWATCHED, new Jumping(7));
    for (int round = 1; round <= ROUNDS; round++) {
      List<StepOutcome> outcomes = pipeline.run(steps(inbox(round)));
      StepOutcome.Computed computed = (StepOutcome.Computed) outcomes.get(1);
      StepOutcome.Computed again =
          (StepOutcome.Computed) pipeline.run(new Step.Compute(MONTH, Optional.empty())).get(0);
      StepOutcome.Published published = (StepOutcome.Published) pipeline.run(publish()).get(0);

      assertEquals(again.run().id(), published.run().id(), "the newest run is the last that ran");
      assertTrue(again.run().committedAt().isAfter(computed.run().committedAt()));
      assertEquals(round, again.run().census().get("overhauls.current"));
      assertEquals(0, again.run().census().getOrDefault("overhauls.duplicate", 0L));
      assertTrue(again.run().milliseconds().values().stream().allMatch(spent -> spent >= 0));
    }
    assertOrdered();
  }

  private void assertOrdered() {
    try (Lake lake = Lake.open(folder.resolve("lake"))) {
      List<Batch> batches = lake.batches().committed();
      assertEquals(ROUNDS, batches.size());
      assertEquals(ROUNDS, new HashSet<>(batches.stream().map(Batch::id).toList()).size());
      assertEquals(
          batches, batches.stream().sorted(Comparator.comparing(Batch::committedAt)).toList());
      for (int known = 1; known <= ROUNDS; known++) {
        Instant at = batches.get(known - 1).committedAt();
        assertEquals(batches.subList(0, known), lake.batches().knownAt(at).orElseThrow().batches());
      }
      List<Run> runs = lake.runs().committed();
      assertEquals(2 * ROUNDS, runs.size());
      assertEquals(runs, runs.stream().sorted(Comparator.comparing(Run::committedAt)).toList());
    }
  }

  private Step[] steps(Path inbox) {
    return new Step[] {
      new Step.Ingest(inbox), new Step.Compute(MONTH, Optional.empty()), publish()
    };
  }

  private Step publish() {
    return new Step.Publish(MONTH, folder.resolve("out"), new Step.RunChoice.Newest());
  }

  private Path inbox(int round) throws IOException {
    Path inbox = Files.createDirectories(folder.resolve("inbox" + round));
    Files.writeString(
        inbox.resolve("machines.csv"),
        """
        vessel,machine,kind,model,cylinders,places_per_cylinder
        plover,ME,main-engine,TWS-A,6,2
        """);
    Files.writeString(
        inbox.resolve("hours.csv"),
        """
        vessel,machine,read_at,hours,kind
        plover,ME,2022-12-31,0,counter
        plover,ME,2024-12-31,12000,counter
        """);
    Files.writeString(
        inbox.resolve("overhauls.csv"),
        """
        vessel,overhaul,machine,component,unit,place,done_on,reason
        plover,B%d,ME,fuel-injector,1,1,2023-%02d-07,breakdown
        """
            .formatted(round, round));
    return inbox;
  }

  private static final class Jumping extends Clock {
    private final Random random;
    private Instant now = Instant.parse("2025-02-01T06:00:00Z");

    Jumping(long seed) {
      this.random = new Random(seed);
    }

    @Override
    public Instant instant() {
      now = now.plus(Duration.ofMinutes(random.nextInt(20_001) - 10_000));
      return now;
    }

    @Override
    public ZoneId getZone() {
      return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
      return this;
    }
  }
}
