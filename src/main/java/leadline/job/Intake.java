package leadline.job;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import leadline.fleet.RecordKind;
import leadline.intake.FileOutcome;
import leadline.intake.Inbox;
import leadline.intake.RefusedRow;
import leadline.lake.Loaded;
import leadline.lake.LoadedFile;
import leadline.problem.FileFault;

/** What the tasks of an ingest made of the exports, put together. */
record Intake(List<Loaded> loaded) {

  /** The files that could be read, by name. */
  List<LoadedFile> loadedFiles() {
    List<LoadedFile> files = new ArrayList<>();
    for (Loaded.Outcome outcome : outcomes()) {
      if (outcome.outcome() instanceof FileOutcome.FileTally tally) {
        files.add(
            new LoadedFile(
                outcome.file().path(),
                outcome.file().digest(),
                tally.rowsRead(),
                tally.stored(),
                tally.refused(),
                tally.trimmedCells()));
      }
    }
    return files;
  }

  StepOutcome.Ingested outcome(Path folder, String batch, Inbox inbox, List<String> alreadyLoaded) {
    return new StepOutcome.Ingested(
        folder,
        loadedFiles().isEmpty() ? Optional.empty() : Optional.of(batch),
        Optional.empty(),
        loadedFiles(),
        unusable(inbox),
        firstRefused(),
        unknownColumns(),
        alreadyLoaded,
        inbox.ignored());
  }

  /** The outcome where all files of a batch were read again. */
  StepOutcome.Ingested readAgain(Path folder, String batch, String before) {
    return new StepOutcome.Ingested(
        folder,
        Optional.of(batch),
        Optional.of(before),
        loadedFiles(),
        List.of(),
        firstRefused(),
        unknownColumns(),
        List.of(),
        List.of());
  }

  /** The kinds of which a file of the inbox could not be read. */
  Set<RecordKind> unread(Inbox inbox) {
    Set<RecordKind> unread = EnumSet.noneOf(RecordKind.class);
    unusable(inbox).forEach(fault -> unread.addAll(unread(fault)));
    return unread;
  }

  /** What cannot be listed, such as a closed folder, may hold any kind; a foreign file none. */
  private static Set<RecordKind> unread(FileFault fault) {
    String name = fault.file().substring(fault.file().lastIndexOf('/') + 1);
    return RecordKind.ofFileName(name)
        .<Set<RecordKind>>map(EnumSet::of)
        .orElseGet(
            () ->
                fault instanceof FileFault.UnrecognisedFile
                    ? EnumSet.noneOf(RecordKind.class)
                    : EnumSet.allOf(RecordKind.class));
  }

  private List<FileFault> unusable(Inbox inbox) {
    List<FileFault> unusable = new ArrayList<>(inbox.unusable());
    unusable.addAll(unusable());
    return unusable;
  }

  /** What is wrong with exports that could be listed and not be read. */
  List<FileFault> unusable() {
    List<FileFault> unusable = new ArrayList<>();
    for (Loaded.Outcome outcome : outcomes()) {
      if (outcome.outcome() instanceof FileOutcome.UnusableFile file) {
        unusable.addAll(file.faults());
      }
    }
    return unusable;
  }

  private Map<String, SortedSet<String>> unknownColumns() {
    Map<String, SortedSet<String>> columns = new TreeMap<>();
    for (Loaded.Outcome outcome : outcomes()) {
      if (outcome.outcome() instanceof FileOutcome.FileTally tally
          && !tally.unknownColumns().isEmpty()) {
        columns.put(outcome.file().path(), tally.unknownColumns());
      }
    }
    return columns;
  }

  private List<RefusedRow> firstRefused() {
    return loaded.stream()
        .flatMap(task -> task.firstRefused().stream())
        .sorted(
            Comparator.comparing((RefusedRow row) -> row.origin().file())
                .thenComparing(row -> row.origin().line()))
        .toList();
  }

  private List<Loaded.Outcome> outcomes() {
    return loaded.stream()
        .flatMap(task -> task.outcomes().stream())
        .sorted(Comparator.comparing(outcome -> outcome.file().path()))
        .toList();
  }
}
