package leadline.intake;

import java.io.Serializable;
import java.util.Locale;
import leadline.fleet.RecordKind;
import leadline.origin.FileDigest;
import leadline.origin.Origin;

/**
 * One export: what it holds, and where its rows say they came from.
 *
 * @param path below the inbox, with {@code /} between folders
 */
public record ExportFile(RecordKind kind, String path, FileDigest digest) implements Serializable {

  /** Whether a file of this name is a workbook of a spreadsheet program. */
  static boolean isWorkbook(String name) {
    return name.toLowerCase(Locale.ROOT).endsWith(".xlsx");
  }

  boolean isWorkbook() {
    return isWorkbook(path);
  }

  Origin line(long number) {
    return new Origin(path, digest, number);
  }
}
