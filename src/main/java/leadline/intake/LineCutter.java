package leadline.intake;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import leadline.problem.LineFault;

/**
 * Cuts bytes into physical lines, whichever of LF, CR LF and CR ends each. Memory is bounded
 * whatever the bytes are: of a line beyond {@link #MOST_BYTES_KEPT} only the beginning is kept.
 */
final class LineCutter {

  /** The longest row that is read. */
  static final int MOST_CHARACTERS = 100_000;

  private static final int MOST_BYTES_KEPT = 4 << 20;

  /** Bytes of the longest letter in UTF-8. */
  private static final int LONGEST_LETTER = 4;

  private final InputStream bytes;
  private byte[] buffer = new byte[1 << 16];
  private int start;
  private int filled;
  private long dropped;
  private long lines;

  LineCutter(InputStream bytes) {
    this.bytes = bytes;
  }

  /** The next line; nothing at the end of the file. */
  Optional<PhysicalLine> next() throws IOException {
    int end = start;
    while (true) {
      while (end < filled && buffer[end] != '\n' && buffer[end] != '\r') {
        end++;
      }
      if (end < filled) {
        return Optional.of(upToLineEnd(end));
      }
      dropBeyondMost();
      int scanned = filled - start;
      if (!fill()) {
        return scanned == 0 ? Optional.empty() : Optional.of(line(filled, filled, ""));
      }
      end = start + scanned;
    }
  }

  private PhysicalLine upToLineEnd(int found) throws IOException {
    int end = found;
    if (buffer[end] == '\n') {
      return line(end, end + 1, "\n");
    }
    if (end + 1 == filled) {
      int length = end - start;
      fill();
      end = start + length;
    }
    return end + 1 < filled && buffer[end + 1] == '\n'
        ? line(end, end + 2, "\r\n")
        : line(end, end + 1, "\r");
  }

  private PhysicalLine line(int end, int next, String lineEnd) {
    int kept = Math.min(end, start + MOST_BYTES_KEPT);
    if (dropped > 0 || kept < end) {
      kept = endOfWholeLetters(kept);
    }
    LineText text = LineText.of(buffer, start, kept);
    long missing = dropped + end - kept;
    start = next;
    dropped = 0;
    lines++;
    if (text.text().length() <= MOST_CHARACTERS) {
      return new PhysicalLine(lines, text.text(), lineEnd, text.faults());
    }
    List<LineFault> faults = new ArrayList<>(text.faults());
    faults.add(new LineFault.RowTooLong(MOST_CHARACTERS));
    String shown = missing == 0 ? text.text() : text.text() + "... (" + missing + " more bytes)";
    return new PhysicalLine(lines, shown, lineEnd, faults);
  }

  /** Where the last letter begins, so that a cut behind it does not look like a wrong encoding. */
  private int endOfWholeLetters(int cut) {
    int at = cut - 1;
    while (at > cut - LONGEST_LETTER && isInsideLetter(buffer[at])) {
      at--;
    }
    return at;
  }

  private static boolean isInsideLetter(byte unit) {
    return (unit & 0xC0) == 0x80;
  }

  private void dropBeyondMost() {
    int excess = filled - start - MOST_BYTES_KEPT;
    if (excess > 0) {
      dropped += excess;
      filled -= excess;
    }
  }

  /** Reads more bytes behind those not yet handed out, which move to the buffer's beginning. */
  private boolean fill() throws IOException {
    System.arraycopy(buffer, start, buffer, 0, filled - start);
    filled -= start;
    start = 0;
    if (filled == buffer.length) {
      buffer = Arrays.copyOf(buffer, 2 * buffer.length);
    }
    int read = bytes.read(buffer, filled, buffer.length - filled);
    filled += Math.max(read, 0);
    return read >= 0;
  }
}
