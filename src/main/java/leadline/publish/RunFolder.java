package leadline.publish;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The files of one run: tables, their data package, the manifest, the cautions, documents. */
final class RunFolder {

  private RunFolder() {}

  /** Fills an existing, empty folder. */
  static void write(Issue issue, Path folder, Documents documents, Boundary boundary)
      throws IOException {
    List<TableFiles> files = new ArrayList<>();
    for (PublishedTable table : issue.tables()) {
      files.add(TableFiles.write(table, folder));
    }
    boundary.reached("tables staged");
    DataPackage.write(issue.manifest().month(), files, folder);
    RunFile.write(issue.manifest(), files, folder);
    Files.writeString(folder.resolve("CAUTIONS.txt"), cautions(issue), StandardCharsets.UTF_8);
    documents.write(issue, folder);
  }

  private static String cautions(Issue issue) {
    return String.join("\n\n", issue.cautions()) + "\n";
  }
}
