package leadline.intake;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import leadline.fleet.Column;
import leadline.fleet.Layout;
import leadline.problem.FileFault;
import leadline.problem.LineFault;

/**
 * The names in a file's first line, in its order.
 *
 * @param names trimmed and in lower case; a column without a name is called by its place
 */
record Header(List<String> names) {

  /** Reads the header, or adds to the faults why the file is unusable. */
  static Optional<Header> read(LineCutter lines, ExportFile file, List<FileFault> faults)
      throws IOException {
    Optional<PhysicalLine> line = lines.next();
    while (line.isPresent() && line.get().isBlank()) {
      line = lines.next();
    }
    if (line.isEmpty()) {
      faults.add(new FileFault.EmptyFile(file.path()));
      return Optional.empty();
    }
    Optional<FileFault> unreadable = unreadable(line.get(), file);
    if (unreadable.isPresent()) {
      faults.add(unreadable.get());
      return Optional.empty();
    }
    String text = Blanks.trim(line.get().text());
    String[] cells =
        FieldSplitter.split(List.of(new TextRow(line.get().number(), text, List.of()))).get(0);
    return of(List.of(cells), text, file, faults);
  }

  /**
   * The header of these cells; nothing, and the faults, where they make the file unusable.
   *
   * @param text the cells as they stand in the file, for people
   */
  static Optional<Header> of(
      List<String> cells, String text, ExportFile file, List<FileFault> faults) {
    Header header = new Header(names(cells));
    faults.addAll(header.faults(file, text));
    return faults.isEmpty() ? Optional.of(header) : Optional.empty();
  }

  private static Optional<FileFault> unreadable(PhysicalLine line, ExportFile file) {
    for (LineFault fault : line.faults()) {
      if (fault instanceof LineFault.NulByte) {
        return Optional.of(new FileFault.NotPlainText(file.path()));
      }
    }
    for (LineFault fault : line.faults()) {
      if (fault instanceof LineFault.NotUtf8 notUtf8) {
        return Optional.of(new FileFault.HeaderNotUtf8(file.path(), notUtf8.text()));
      }
    }
    QuoteScan scan = QuoteScan.of(line);
    Optional<LineFault> fault =
        scan.isOpen() ? Optional.of(new LineFault.OpenQuote()) : scan.fault();
    return fault
        .or(() -> line.faults().stream().findFirst())
        .map(broken -> new FileFault.BrokenHeader(file.path(), broken.sentence()));
  }

  private static List<String> names(List<String> cells) {
    List<String> names = new ArrayList<>();
    for (String cell : cells) {
      String name = Blanks.trim(cell).toLowerCase(Locale.ROOT);
      names.add(name.isEmpty() ? "column " + (names.size() + 1) : name);
    }
    return List.copyOf(names);
  }

  private List<FileFault> faults(ExportFile file, String text) {
    Layout layout = file.kind().layout();
    if (names.stream().noneMatch(name -> layout.named(name).isPresent())) {
      return List.of(
          new FileFault.NoKnownColumn(
              file.path(), text, layout.columns().stream().map(Column::name).toList()));
    }
    List<FileFault> faults = new ArrayList<>();
    for (Column<?> column : layout.columns()) {
      if (column.mustBeInHeader() && !names.contains(column.name())) {
        faults.add(new FileFault.MissingColumn(file.path(), column.name()));
      }
    }
    repeated().forEach(name -> faults.add(new FileFault.DuplicateColumn(file.path(), name)));
    return faults;
  }

  private Set<String> repeated() {
    Set<String> once = new LinkedHashSet<>();
    Set<String> repeated = new LinkedHashSet<>();
    names.stream().filter(name -> !once.add(name)).forEach(repeated::add);
    return repeated;
  }
}
