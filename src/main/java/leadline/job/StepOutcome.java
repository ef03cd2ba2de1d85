package leadline.job;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import leadline.intake.RefusedRow;
import leadline.lake.Batch;
import leadline.lake.LoadedFile;
import leadline.lake.Run;
import leadline.lake.Upkeep;
import leadline.lake.Withdrawal;
import leadline.problem.FileFault;

/** What a step did. */
public sealed interface StepOutcome {

  /**
   * Exports were taken into the lake.
   *
   * @param batch none where no file was new and readable
   * @param inPlaceOf the batch whose files were read again
   * @param firstRefused the first refused rows; the lake keeps all of them
   * @param unknownColumns columns that the layout does not know, by file; their cells are kept
   */
  record Ingested(
      Path inbox,
      Optional<String> batch,
      Optional<String> inPlaceOf,
      List<LoadedFile> files,
      List<FileFault> unusable,
      List<RefusedRow> firstRefused,
      Map<String, SortedSet<String>> unknownColumns,
      List<String> alreadyLoaded,
      List<String> ignored)
      implements StepOutcome {

    public long rowsRead() {
      return files.stream().mapToLong(LoadedFile::rowsRead).sum();
    }

    public long rowsStored() {
      return files.stream().mapToLong(LoadedFile::rowsStored).sum();
    }

    public long rowsRefused() {
      return files.stream().mapToLong(LoadedFile::rowsRefused).sum();
    }
  }

  /** A batch was taken back. */
  record Withdrawn(Batch batch, Withdrawal withdrawal) implements StepOutcome {}

  /**
   * Summary tables were made.
   *
   * @param firstProblems one problem of each kind in full
   */
  record Computed(Run run, SortedMap<String, String> firstProblems) implements StepOutcome {}

  /**
   * A month was published.
   *
   * @param links the links that now lead to it
   * @param words the month in words
   */
  record Published(Run run, List<Path> links, List<String> words) implements StepOutcome {}

  /**
   * The lake was tidied.
   *
   * @param offTheList superseded runs that were taken off the list of runs
   * @param snapshotsExpired states of tables that cannot be read any more
   * @param filesDeleted files that nothing referred to
   */
  record Tidied(
      List<Run> offTheList, Upkeep.Rewritten tables, long snapshotsExpired, long filesDeleted)
      implements StepOutcome {

    public Tidied {
      offTheList = List.copyOf(offTheList);
    }
  }
}
