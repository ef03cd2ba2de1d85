package leadline.job;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import leadline.intake.ExportFile;
import leadline.intake.Inbox;
import leadline.lake.Batch;
import leadline.lake.Delivery;
import leadline.lake.Engine;
import leadline.lake.LoadedFile;
import leadline.problem.FileFault;
import leadline.settings.Source;

/**
 * The files of a batch read again, by the catalogue and the program of today, as a new batch in its
 * place. The writer's lock must be held.
 */
final class ReadAgain {

  private final Taking taking;
  private final Batch before;

  ReadAgain(Taking taking, Batch before) {
    this.taking = taking;
    this.before = before;
  }

  /**
   * Replaces the batch. All its files must be there and readable, or nothing is done.
   *
   * @param source what the inbox says of its source today
   */
  StepOutcome.Ingested from(Path folder, Inbox inbox, Source source, Engine engine) {
    List<ExportFile> files = files(folder, inbox);
    String batch = Identifiers.next(taking.clock());
    Intake intake = taking.read(folder, files, batch, before.committedAt(), engine);
    requireRead(intake.unusable());
    Delivery delivery =
        new Delivery(
            folder.toString(), source, before.delivery().unread(), Optional.of(before.id()));
    taking.commit(intake, batch, delivery);
    return intake.readAgain(folder, batch, before.id());
  }

  private List<ExportFile> files(Path folder, Inbox inbox) {
    List<ExportFile> files = new ArrayList<>();
    List<String> missing = new ArrayList<>();
    for (LoadedFile file : before.files()) {
      inbox.exports().stream()
          .filter(export -> export.digest().equals(file.digest()))
          .findFirst()
          .ifPresentOrElse(files::add, () -> missing.add(lost(file, inbox)));
    }
    if (!missing.isEmpty()) {
      throw new UnusableRequest(
          "The batch %s cannot be read again from %s: %s. Put the files back as they were, or name their folder as the inbox."
              .formatted(before.id(), folder, String.join(", ", missing)));
    }
    return files;
  }

  private static String lost(LoadedFile file, Inbox inbox) {
    boolean isThere =
        inbox.exports().stream().anyMatch(export -> export.path().equals(file.name()));
    return file.name() + (isThere ? " has changed" : " is missing");
  }

  private void requireRead(List<FileFault> faults) {
    if (!faults.isEmpty()) {
      throw new UnusableRequest(
          "The batch %s cannot be read again and stays as it was: %s"
              .formatted(
                  before.id(),
                  faults.stream().map(FileFault::sentence).collect(Collectors.joining(" "))));
    }
  }
}
