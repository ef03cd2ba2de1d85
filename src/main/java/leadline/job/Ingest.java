package leadline.job;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import leadline.fleet.RecordKind;
import leadline.intake.ExportFile;
import leadline.intake.Inbox;
import leadline.lake.Delivery;
import leadline.lake.Engine;
import leadline.origin.FileDigest;
import leadline.settings.Source;

/** Exports to lake, as one batch. The writer's lock must be held. */
final class Ingest {

  private final Taking taking;

  Ingest(Taking taking) {
    this.taking = taking;
  }

  StepOutcome.Ingested from(Path folder, Inbox inbox, Source source, Engine engine) {
    NewExports exports = newExports(inbox, source);
    String batch = Identifiers.next(taking.clock());
    Intake intake = taking.read(folder, exports.files(), batch, taking.clock().instant(), engine);
    if (!intake.loadedFiles().isEmpty()) {
      Delivery delivery =
          new Delivery(folder.toString(), source, intake.unread(inbox), Optional.empty());
      taking.commit(intake, batch, delivery);
    }
    return intake.outcome(folder, batch, inbox, exports.alreadyLoaded());
  }

  /**
   * A snapshot is taken in whole or not at all: of a kind that has a new file, those that are in
   * the lake already are read again, so that their records are not missed.
   */
  private NewExports newExports(Inbox inbox, Source source) {
    Set<FileDigest> loaded = taking.lake().batches().loadedFiles();
    Set<RecordKind> whole = EnumSet.noneOf(RecordKind.class);
    inbox.exports().stream()
        .filter(file -> source.snapshots().contains(file.kind()))
        .filter(file -> !loaded.contains(file.digest()))
        .forEach(file -> whole.add(file.kind()));
    Set<FileDigest> seen = new HashSet<>();
    List<ExportFile> files = new ArrayList<>();
    List<String> alreadyLoaded = new ArrayList<>();
    for (ExportFile file : inbox.exports()) {
      boolean isWanted = whole.contains(file.kind()) || !loaded.contains(file.digest());
      if (isWanted && seen.add(file.digest())) {
        files.add(file);
      } else {
        alreadyLoaded.add(file.path());
      }
    }
    return new NewExports(files, alreadyLoaded);
  }

  /** The exports to take in, and the others. */
  private record NewExports(List<ExportFile> files, List<String> alreadyLoaded) {}
}
