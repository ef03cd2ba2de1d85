package leadline.intake;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import leadline.fleet.Catalogue;
import leadline.fleet.FormulaGuard;
import leadline.fleet.RecordKind;
import leadline.fleet.SourcedRow;
import leadline.fleet.StoredRow;
import leadline.problem.FileFault;
import leadline.problem.LineFault;
import leadline.problem.RowFault;

/**
 * Reads one export of the plain layout: CSV in UTF-8 with a header, any line ends, fields in double
 * quotes where they hold commas or line breaks; or a workbook, of which it reads the sheet that is
 * named as its record. One bad row costs that row and nothing else.
 */
public final class ExportReader {

  /** How much text is split into fields at a time. */
  private static final int BLOCK_CHARACTERS = 1 << 16;

  private final RowReader rows;
  private final ExportFile file;
  private final RowSink sink;
  private long rowsRead;
  private long stored;
  private long refused;
  private long trimmedCells;

  private ExportReader(RowReader rows, ExportFile file, RowSink sink) {
    this.rows = rows;
    this.file = file;
    this.sink = sink;
  }

  /**
   * Reads a file of an inbox.
   *
   * @param now the moment of the intake, after which nothing can have happened
   * @throws IOException if the file cannot be read or the sink fails
   */
  public static FileOutcome read(
      Path inbox, ExportFile file, Catalogue catalogue, Instant now, RowSink sink)
      throws IOException {
    try (InputStream bytes = Files.newInputStream(inbox.resolve(file.path()))) {
      return read(bytes, file, catalogue, now, sink);
    }
  }

  /**
   * Reads the bytes of a file to their end.
   *
   * @param now the moment of the intake, after which nothing can have happened
   * @throws IOException if the bytes cannot be read or the sink fails
   */
  public static FileOutcome read(
      InputStream bytes, ExportFile file, Catalogue catalogue, Instant now, RowSink sink)
      throws IOException {
    return file.isWorkbook()
        ? readWorkbook(bytes, file, catalogue, now, sink)
        : readText(bytes, file, catalogue, now, sink);
  }

  private static FileOutcome readWorkbook(
      InputStream bytes, ExportFile file, Catalogue catalogue, Instant now, RowSink sink)
      throws IOException {
    List<FileFault> faults = new ArrayList<>();
    List<SheetRow> sheet = WorkbookFile.rows(bytes, file, faults);
    Optional<Header> header =
        sheet.isEmpty()
            ? Optional.empty()
            : Header.of(sheet.get(0).cells(), sheet.get(0).raw(), file, faults);
    if (header.isEmpty()) {
      return new FileOutcome.UnusableFile(faults);
    }
    RowReader rows = new RowReader(file.kind(), header.get(), catalogue, now);
    return new ExportReader(rows, file, sink).readAll(sheet.subList(1, sheet.size()));
  }

  private FileOutcome readAll(List<SheetRow> sheet) throws IOException {
    for (SheetRow row : sheet) {
      rowsRead++;
      if (row.raw().length() > LineCutter.MOST_CHARACTERS) {
        refuse(row.text(), "", "", List.of(new LineFault.RowTooLong(LineCutter.MOST_CHARACTERS)));
      } else {
        hand(row.text(), rows.read(row.cells().toArray(String[]::new)));
      }
    }
    return tally();
  }

  private static FileOutcome readText(
      InputStream bytes, ExportFile file, Catalogue catalogue, Instant now, RowSink sink)
      throws IOException {
    LineCutter lines = new LineCutter(bytes);
    List<FileFault> faults = new ArrayList<>();
    Optional<Header> header = Header.read(lines, file, faults);
    if (header.isEmpty()) {
      return new FileOutcome.UnusableFile(faults);
    }
    RowReader rows = new RowReader(file.kind(), header.get(), catalogue, now);
    return new ExportReader(rows, file, sink)
        .readAll(new RowAssembler(lines, header.get().names().size()));
  }

  private FileOutcome readAll(RowAssembler assembler) throws IOException {
    List<TextRow> block = new ArrayList<>();
    int characters = 0;
    for (Optional<TextRow> row = assembler.next(); row.isPresent(); row = assembler.next()) {
      rowsRead++;
      block.add(row.get());
      characters += row.get().raw().length();
      if (characters >= BLOCK_CHARACTERS) {
        hand(block);
        block.clear();
        characters = 0;
      }
    }
    hand(block);
    return tally();
  }

  private FileOutcome tally() {
    return new FileOutcome.FileTally(
        rowsRead, stored, refused, trimmedCells, rows.unknownColumns());
  }

  private void hand(List<TextRow> block) throws IOException {
    List<TextRow> whole = block.stream().filter(row -> row.faults().isEmpty()).toList();
    int split = 0;
    List<String[]> fields = FieldSplitter.split(whole);
    for (TextRow row : block) {
      if (row.faults().isEmpty()) {
        hand(row, rows.read(asWritten(fields.get(split++))));
      } else {
        refuse(row, "", "", row.faults());
      }
    }
  }

  /** Of sheets that were handed out with guarded texts, the texts themselves. */
  private String[] asWritten(String[] texts) {
    return file.kind() == RecordKind.RETURNS
        ? Arrays.stream(texts).map(FormulaGuard::off).toArray(String[]::new)
        : texts;
  }

  private void hand(TextRow row, ReadRow read) throws IOException {
    if (!read.faults().isEmpty()) {
      refuse(row, read.vessel(file.kind()), read.key(file.kind()), read.faults());
      return;
    }
    sink.stored(
        new StoredRow(
            new SourcedRow(read.cells().build(), file.line(row.line())), read.extras(), row.raw()));
    stored++;
    trimmedCells += read.trimmedCells();
  }

  private void refuse(TextRow row, String vessel, String key, List<? extends RowFault> faults)
      throws IOException {
    sink.refused(
        new RefusedRow(
            file.kind(), file.line(row.line()), vessel, key, row.raw(), List.copyOf(faults)));
    refused++;
  }
}
