package leadline.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Locale;
import leadline.fleet.Catalogue;
import leadline.fleet.StoredRow;
import leadline.intake.ExportFile;
import leadline.intake.ExportReader;
import leadline.intake.FileOutcome;
import leadline.intake.Inbox;
import leadline.intake.RefusedRow;
import leadline.intake.RowSink;
import leadline.problem.FileFault;

/** Reads an inbox as an ingest would, and says what it would refuse. */
final class InboxCheck {

  private final Console console;
  private final Catalogue catalogue;
  private final Instant now;

  InboxCheck(Console console, Catalogue catalogue, Instant now) {
    this.console = console;
    this.catalogue = catalogue;
    this.now = now;
  }

  /** Whether every export can be read; refused rows alone are no failure. */
  boolean isUsable(Path folder) throws IOException {
    Inbox inbox = Inbox.list(folder);
    inbox.unusable().forEach(this::print);
    inbox.ignored().forEach(file -> console.out().println(file + ": not CSV, passed over"));
    boolean usable = inbox.unusable().isEmpty();
    for (ExportFile file : inbox.exports()) {
      usable &= isUsable(folder, file);
    }
    return usable;
  }

  private boolean isUsable(Path folder, ExportFile file) throws IOException {
    FileOutcome outcome = ExportReader.read(folder, file, catalogue, now, new PrintRefused());
    if (outcome instanceof FileOutcome.FileTally tally) {
      print(file, tally);
      return true;
    } else if (outcome instanceof FileOutcome.UnusableFile unusable) {
      unusable.faults().forEach(this::print);
      return false;
    }
    throw new IllegalStateException("an outcome of an unknown kind: " + outcome);
  }

  private void print(ExportFile file, FileOutcome.FileTally tally) {
    console
        .out()
        .printf(
            Locale.ROOT,
            "%s: rows read %,d, would be stored %,d, refused %,d%s%n",
            file.path(),
            tally.rowsRead(),
            tally.stored(),
            tally.refused(),
            tally.unknownColumns().isEmpty()
                ? ""
                : "; columns not used: " + String.join(", ", tally.unknownColumns()));
  }

  private void print(FileFault fault) {
    console.out().println(fault.sentence());
  }

  /** Says of each refused row why. */
  private final class PrintRefused implements RowSink {
    @Override
    public void stored(StoredRow row) {}

    @Override
    public void refused(RefusedRow row) {
      row.sentences().forEach(console.out()::println);
    }
  }
}
