package leadline.job;

import java.time.Clock;
import leadline.lake.Batch;
import leadline.lake.Lake;
import leadline.lake.Withdrawal;
import leadline.publish.Boundary;

/** Takes a batch back. The writer's lock must be held. */
final class Withdraw {

  private final Lake lake;
  private final Clock clock;
  private final Boundary boundary;

  Withdraw(Lake lake, Clock clock, Boundary boundary) {
    this.lake = lake;
    this.clock = clock;
    this.boundary = boundary;
  }

  StepOutcome.Withdrawn batch(String id) {
    Batch batch = CountingBatch.named(id, lake);
    boundary.reached("withdrawal begun");
    Withdrawal withdrawal = lake.batches().withdraw(id, clock.instant(), ProgramVersion.current());
    boundary.reached("withdrawal committed");
    return new StepOutcome.Withdrawn(batch, withdrawal);
  }
}
