package leadline.publish;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.dhatim.fastexcel.Workbook;

/**
 * All tables of a month in one XLSX workbook, a sheet each, behind a sheet that explains them. The
 * data package does not list it: it holds the rows of the files that are listed.
 */
final class WorkbookFile {

  private WorkbookFile() {}

  static void write(Issue issue, Path folder) throws IOException {
    Path file = folder.resolve("leadline-" + issue.manifest().month() + ".xlsx");
    try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file));
        Workbook workbook = new Workbook(out, "Leadline", null)) {
      new WorkbookGuide(workbook.newWorksheet("read-me"), issue).write();
      for (PublishedTable table : issue.tables()) {
        new WorkbookTable(workbook.newWorksheet(table.spec().name()), table).write();
      }
    }
  }
}
