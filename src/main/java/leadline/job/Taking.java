package leadline.job;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import leadline.fleet.Catalogue;
import leadline.intake.ExportFile;
import leadline.lake.Batch;
import leadline.lake.Delivery;
import leadline.lake.Engine;
import leadline.lake.Lake;
import leadline.lake.Loading;
import leadline.publish.Boundary;

/** How a lake takes exports in: read first, then committed. The writer's lock must be held. */
record Taking(Lake lake, Catalogue catalogue, Clock clock, Boundary boundary) {

  /**
   * Reads exports and writes their rows under the batch's name, without committing them.
   *
   * @param now the moment after which nothing in the exports can have happened
   */
  Intake read(Path folder, List<ExportFile> exports, String batch, Instant now, Engine engine) {
    Intake intake =
        new Intake(new Loading(lake, folder, catalogue, now).load(engine, exports, batch));
    boundary.reached("files written");
    return intake;
  }

  Batch commit(Intake intake, String batch, Delivery delivery) {
    lake.append(intake.loaded(), boundary::reached);
    Batch committed =
        lake.batches()
            .commit(
                batch, clock.instant(), ProgramVersion.current(), intake.loadedFiles(), delivery);
    boundary.reached("batch " + committed.sequence() + " committed");
    return committed;
  }
}
