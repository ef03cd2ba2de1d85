package leadline.intake;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import leadline.fleet.RecordKind;
import leadline.problem.FileFault;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.commons.compress.utils.SeekableInMemoryByteChannel;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;

/** The sheet of a workbook that holds a record's rows. */
final class WorkbookFile {

  /** A ship fills in hundreds of rows; a workbook of thousands is smaller by far. */
  static final int MOST_BYTES = 16 << 20;

  private static final long MOST_BYTES_UNPACKED = 16L * MOST_BYTES;

  private static final ReadingOptions WITH_FORMATS_AND_BAD_CELLS = new ReadingOptions(true, true);

  private WorkbookFile() {}

  /**
   * The rows of the first sheet whose name begins with the record's word, the header first, blank
   * rows left out, none shorter than the header. None, and a fault, where there are none to read.
   */
  static List<SheetRow> rows(InputStream stream, ExportFile file, List<FileFault> faults)
      throws IOException {
    byte[] bytes = stream.readNBytes(MOST_BYTES + 1);
    try {
      Optional<FileFault> unusable = unusable(bytes, file);
      unusable.ifPresent(faults::add);
      return unusable.isEmpty() ? read(bytes, file, faults) : List.of();
    } catch (IOException | RuntimeException e) { // the library throws either at damaged content
      faults.add(new FileFault.DamagedWorkbook(file.path()));
      return List.of();
    }
  }

  private static Optional<FileFault> unusable(byte[] bytes, ExportFile file) throws IOException {
    if (bytes.length == 0) {
      return Optional.of(new FileFault.EmptyFile(file.path()));
    } else if (bytes.length > MOST_BYTES) {
      return Optional.of(new FileFault.WorkbookTooLarge(file.path()));
    } else if (ReadableWorkbook.isOLE2Header(bytes)) {
      return Optional.of(new FileFault.LockedWorkbook(file.path()));
    }
    return isTooLargeUnpacked(bytes)
        ? Optional.of(new FileFault.WorkbookTooLarge(file.path()))
        : Optional.empty();
  }

  /** Read by the same library as the workbook itself, so that no entry escapes the count. */
  private static boolean isTooLargeUnpacked(byte[] bytes) throws IOException {
    long unpacked = 0;
    byte[] buffer = new byte[1 << 16];
    try (ZipFile zip =
        ZipFile.builder().setSeekableByteChannel(new SeekableInMemoryByteChannel(bytes)).get()) {
      for (ZipArchiveEntry entry : Collections.list(zip.getEntries())) {
        try (InputStream content = zip.getInputStream(entry)) {
          for (int read = content.read(buffer); read >= 0; read = content.read(buffer)) {
            unpacked += read;
            if (unpacked > MOST_BYTES_UNPACKED) {
              return true;
            }
          }
        }
      }
    }
    return false;
  }

  private static List<SheetRow> read(byte[] bytes, ExportFile file, List<FileFault> faults)
      throws IOException {
    try (ReadableWorkbook workbook =
        new ReadableWorkbook(new ByteArrayInputStream(bytes), WITH_FORMATS_AND_BAD_CELLS)) {
      List<Sheet> sheets = workbook.getSheets().toList();
      Optional<Sheet> sheet = sheets.stream().filter(one -> isOf(file.kind(), one)).findFirst();
      if (sheet.isEmpty()) {
        faults.add(
            new FileFault.NoSuchSheet(
                file.path(), file.kind().word(), sheets.stream().map(Sheet::getName).toList()));
        return List.of();
      }
      List<SheetRow> rows = filled(sheet.get());
      if (rows.isEmpty()) {
        faults.add(new FileFault.EmptyFile(file.path()));
      }
      return rows;
    }
  }

  private static boolean isOf(RecordKind kind, Sheet sheet) {
    return RecordKind.ofFileName(sheet.getName()).equals(Optional.of(kind));
  }

  private static List<SheetRow> filled(Sheet sheet) throws IOException {
    List<SheetRow> filled;
    try (Stream<Row> rows = sheet.openStream()) {
      filled = rows.map(SheetRow::of).filter(row -> !row.isBlank()).toList();
    }
    return filled.isEmpty()
        ? filled
        : filled.stream().map(row -> row.withWidth(filled.get(0).width())).toList();
  }
}
