package leadline.estimate;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A CSV file of data with a header line, or the part of one that a method runs on.
 *
 * @param rows at least one
 */
public record DataFile(DataHeader header, List<DataRow> rows) {

  static final String SET = "set";
  static final String GROUP = "group";

  /** Columns that split any file into several small ones. */
  static final Set<String> SPLITTING = Set.of(SET, GROUP);

  public DataFile {
    rows = List.copyOf(rows);
    if (rows.isEmpty()) {
      throw new UnusableData(header.file() + ": the file has no row of data.");
    }
  }

  /**
   * Reads a file in UTF-8, with decimal points.
   *
   * @throws UnusableData where the file cannot be read, or is no CSV with as many fields on each
   *     line as in its header
   */
  public static DataFile read(Path path) {
    try (CsvReader<CsvRecord> csv =
        CsvReader.builder()
            .detectBomHeader(true)
            .allowMissingFields(true)
            .allowExtraFields(true)
            .ofCsvRecord(path)) {
      return of(path.toString(), csv.iterator());
    } catch (NoSuchFileException e) {
      throw new UnusableData(path + ": there is no such file.");
    } catch (CsvParseException e) {
      throw new UnusableData(path + ": this is no CSV: " + e.getMessage() + ".");
    } catch (IOException | UncheckedIOException e) {
      throw new UnusableData(path + ": the file cannot be read: " + e.getMessage() + ".");
    }
  }

  private static DataFile of(String file, Iterator<CsvRecord> records) {
    if (!records.hasNext()) {
      throw new UnusableData(file + ": the file is empty.");
    }
    DataHeader header =
        new DataHeader(file, records.next().getFields().stream().map(String::strip).toList());
    List<DataRow> rows = new ArrayList<>();
    while (records.hasNext()) {
      CsvRecord record = records.next();
      rows.add(row(header, record));
    }
    return new DataFile(header, rows);
  }

  private static DataRow row(DataHeader header, CsvRecord record) {
    int expected = header.columns().size();
    int found = record.getFieldCount();
    if (found != expected) {
      String column = header.columns().get(Math.min(found, expected - 1));
      throw DataHeader.unusable(
          header.file(),
          record.getStartingLineNumber(),
          column,
          "the header has " + expected + " columns, this line " + found);
    }
    return new DataRow(header, record.getStartingLineNumber(), record.getFields());
  }

  /** The rows that share a word in a column, by that word, in order of first appearance. */
  Map<String, DataFile> by(String column) {
    Map<String, List<DataRow>> parts = new LinkedHashMap<>();
    for (DataRow row : rows) {
      parts.computeIfAbsent(row.word(column), none -> new ArrayList<>()).add(row);
    }
    Map<String, DataFile> files = new LinkedHashMap<>();
    parts.forEach((word, part) -> files.put(word, new DataFile(header, part)));
    return files;
  }

  /** A sentence about the data as a whole, at the column and row that it concerns most. */
  UnusableData infeasible(String column, String why) {
    return rows.get(0).impossible(column, why);
  }
}
