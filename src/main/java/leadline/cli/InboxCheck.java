package leadline.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import leadline.fleet.Catalogue;
import leadline.fleet.StoredRow;
import leadline.intake.ExportFile;
import leadline.intake.ExportReader;
import leadline.intake.FileOutcome;
import leadline.intake.Inbox;
import leadline.intake.InboxFile;
import leadline.intake.RefusedRow;
import leadline.intake.RowSink;
import leadline.problem.FileFault;
import leadline.problem.RowFault;

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

  /** Unusable input where a file could not be read at all; refused rows alone are no failure. */
  ExitCode of(Path folder) throws IOException {
    Inbox inbox = Inbox.list(folder);
    inbox.unusable().forEach(this::print);
    boolean usable = inbox.unusable().isEmpty();
    for (InboxFile file : inbox.exports()) {
      usable &= check(folder, file.digested(folder));
    }
    return usable ? ExitCode.DONE : ExitCode.UNUSABLE_INPUT;
  }

  private boolean check(Path folder, ExportFile file) throws IOException {
    try (InputStream bytes = Files.newInputStream(folder.resolve(file.path()))) {
      FileOutcome outcome = ExportReader.read(bytes, file, catalogue, now, new PrintRefused());
      if (outcome instanceof FileOutcome.UnusableFile unusable) {
        unusable.faults().forEach(this::print);
        return false;
      } else if (outcome instanceof FileOutcome.FileTally tally) {
        print(file, tally);
      }
      return true;
    }
  }

  private void print(ExportFile file, FileOutcome.FileTally tally) {
    console
        .out()
        .printf(
            "%s: %,d rows read, %,d would be stored, %,d refused%s%n",
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
      for (RowFault fault : row.faults()) {
        console
            .out()
            .println(
                row.origin()
                    + (fault.column().isEmpty() ? "" : ", column " + fault.column())
                    + ": "
                    + fault.sentence());
      }
    }
  }
}
