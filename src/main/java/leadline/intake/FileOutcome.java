package leadline.intake;

import java.io.Serializable;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import leadline.problem.FileFault;

/** What became of one export. */
public sealed interface FileOutcome extends Serializable {

  /**
   * The file was read to its end. Every row read is stored or refused.
   *
   * @param trimmedCells cells of stored rows that lost blanks at either end
   * @param unknownColumns names in the header that the layout does not know; their cells are kept
   */
  record FileTally(
      long rowsRead, long stored, long refused, long trimmedCells, SortedSet<String> unknownColumns)
      implements FileOutcome {

    public FileTally {
      unknownColumns = java.util.Collections.unmodifiableSortedSet(new TreeSet<>(unknownColumns));
      if (rowsRead != stored + refused) {
        throw new IllegalStateException(
            rowsRead + " rows read, but " + stored + " stored and " + refused + " refused");
      }
    }
  }

  /** No row of the file could be read. */
  record UnusableFile(List<FileFault> faults) implements FileOutcome {

    public UnusableFile {
      faults = List.copyOf(faults);
    }
  }
}
