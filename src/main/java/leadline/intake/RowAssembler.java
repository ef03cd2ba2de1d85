package leadline.intake;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadline.problem.LineFault;

/**
 * Puts the lines of a quoted field together into one row.
 *
 * <p>A double quote that is never closed would swallow the rest of the file. So lines are joined
 * only if the join closes the quote within {@link #MOST_LINES} and gives the header's number of
 * fields, and if none of the lines swallowed is a complete row by itself. Otherwise the line with
 * the open quote is refused alone and reading goes on behind it.
 */
final class RowAssembler {

  private static final int MOST_LINES = 100;

  private final LineCutter lines;
  private final int fields;
  private final List<PhysicalLine> ahead = new ArrayList<>();

  RowAssembler(LineCutter lines, int fields) {
    this.lines = lines;
    this.fields = fields;
  }

  /** The next row, blank lines passed over; nothing at the end of the file. */
  Optional<TextRow> next() throws IOException {
    Optional<PhysicalLine> first = nextLine();
    while (first.isPresent() && first.get().isBlank()) {
      first = nextLine();
    }
    return first.isEmpty() ? Optional.empty() : Optional.of(rowFrom(first.get()));
  }

  private TextRow rowFrom(PhysicalLine first) throws IOException {
    if (first.text().indexOf('"') < 0 || first.text().length() > LineCutter.MOST_CHARACTERS) {
      return new TextRow(first.number(), first.text(), first.faults());
    }
    QuoteScan scan = QuoteScan.of(first);
    if (scan.isOpen()) {
      Optional<TextRow> joined = join(first, scan);
      return joined.isPresent() ? joined.get() : refuse(first, new LineFault.OpenQuote());
    }
    return scan.fault().isPresent()
        ? refuse(first, scan.fault().get())
        : new TextRow(first.number(), first.text(), first.faults());
  }

  private Optional<TextRow> join(PhysicalLine first, QuoteScan scan) throws IOException {
    StringBuilder raw = new StringBuilder(first.text());
    List<LineFault> faults = new ArrayList<>(first.faults());
    PhysicalLine last = first;
    for (int more = 0; more < MOST_LINES - 1; more++) {
      Optional<PhysicalLine> next = lookAhead(more);
      if (next.isEmpty()
          || raw.length() + last.end().length() + next.get().text().length()
              > LineCutter.MOST_CHARACTERS
          || QuoteScan.of(next.get()).isRowOf(fields)) {
        return Optional.empty();
      }
      raw.append(last.end()).append(next.get().text());
      faults.addAll(next.get().faults());
      scan.follow(next.get().text());
      last = next.get();
      if (!scan.isOpen()) {
        if (!scan.isRowOf(fields)) {
          return Optional.empty();
        }
        ahead.subList(0, more + 1).clear();
        return Optional.of(new TextRow(first.number(), raw.toString(), faults));
      }
    }
    return Optional.empty();
  }

  private static TextRow refuse(PhysicalLine line, LineFault fault) {
    List<LineFault> faults = new ArrayList<>(line.faults());
    faults.add(fault);
    return new TextRow(line.number(), line.text(), faults);
  }

  private Optional<PhysicalLine> nextLine() throws IOException {
    return ahead.isEmpty() ? lines.next() : Optional.of(ahead.remove(0));
  }

  private Optional<PhysicalLine> lookAhead(int more) throws IOException {
    if (more == ahead.size()) {
      Optional<PhysicalLine> next = lines.next();
      if (next.isEmpty()) {
        return next;
      }
      ahead.add(next.get());
    }
    return Optional.of(ahead.get(more));
  }
}
