package leadline.job;

import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import leadline.fleet.Catalogue;
import leadline.intake.ExportFile;
import leadline.intake.Inbox;
import leadline.lake.Batch;
import leadline.lake.Engine;
import leadline.lake.Lake;
import leadline.lake.Loaded;
import leadline.lake.Loading;
import leadline.origin.FileDigest;
import leadline.publish.Boundary;

/** Exports to lake, as one batch. The writer's lock must be held. */
final class Ingest {

  private final Lake lake;
  private final Catalogue catalogue;
  private final Clock clock;
  private final Boundary boundary;

  Ingest(Lake lake, Catalogue catalogue, Clock clock, Boundary boundary) {
    this.lake = lake;
    this.catalogue = catalogue;
    this.clock = clock;
    this.boundary = boundary;
  }

  StepOutcome.Ingested from(Path folder, Inbox inbox, Engine engine) {
    NewExports exports = newExports(inbox);
    String batch = Identifiers.next(clock);
    List<Loaded> loaded =
        new Loading(lake, folder, catalogue, clock.instant()).load(engine, exports.files(), batch);
    boundary.reached("files written");
    Intake intake = new Intake(loaded);
    if (!intake.loadedFiles().isEmpty()) {
      commit(loaded, intake, batch);
    }
    return intake.outcome(folder, batch, inbox, exports.alreadyLoaded());
  }

  private void commit(List<Loaded> loaded, Intake intake, String batch) {
    lake.append(loaded, boundary::reached);
    Batch committed =
        lake.batches()
            .commit(batch, clock.instant(), ProgramVersion.current(), intake.loadedFiles());
    boundary.reached("batch " + committed.sequence() + " committed");
  }

  private NewExports newExports(Inbox inbox) {
    Set<FileDigest> seen = new HashSet<>(lake.batches().loadedFiles());
    List<ExportFile> files = new ArrayList<>();
    List<String> alreadyLoaded = new ArrayList<>();
    for (ExportFile file : inbox.exports()) {
      if (seen.add(file.digest())) {
        files.add(file);
      } else {
        alreadyLoaded.add(file.path());
      }
    }
    return new NewExports(files, alreadyLoaded);
  }

  /** The exports that no committed batch has loaded, and the others. */
  private record NewExports(List<ExportFile> files, List<String> alreadyLoaded) {}
}
