package leadline.study;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import leadline.fleet.Catalogue;
import leadline.lake.Lake;
import leadline.lake.Results;
import leadline.lake.Run;
import leadline.page.Briefings;
import leadline.page.Pages;
import leadline.publish.Documents;
import leadline.publish.Issue;
import leadline.publish.PublishedTable;
import leadline.publish.RunManifest;
import leadline.publish.Standing;
import leadline.quantity.ReportMonth;
import leadline.settings.CatalogueFile;
import leadline.settings.SharedFolder;
import leadline.summary.JobCards;
import leadline.summary.PublishedTables;

/**
 * What the pages of the newest run of a lake cost, apart from the tables, the workbook and the
 * return sheets, and from reading the rows.
 */
public final class PagesCost {

  private final Issue issue;
  private final List<Documents> pages;

  private PagesCost(Lake lake, SharedFolder shared) {
    Catalogue catalogue = CatalogueFile.read(shared.catalogue(), shared);
    List<Run> runs = lake.runs().committed();
    Run run = runs.get(runs.size() - 1);
    Results results = new Results(lake);
    RunManifest manifest =
        new RunManifest(
            run.id(),
            ReportMonth.parse(run.month()),
            run.knownAt(),
            run.programVersion(),
            run.settingsDigest(),
            List.of(),
            Map.of(),
            Map.of(),
            Map.of());
    this.issue =
        new Issue(
            manifest,
            Standing.CURRENT,
            PublishedTables.all().stream()
                .map(spec -> new PublishedTable(spec, results.rows(run, spec)))
                .toList(),
            shared.cautions());
    this.pages =
        List.of(new Pages(catalogue), new Briefings(catalogue, results.rows(run, JobCards.SPEC)));
  }

  private void write(Path folder) throws IOException {
    for (Documents documents : pages) {
      documents.write(issue, folder);
    }
  }

  private static double processorSeconds() {
    OperatingSystemMXBean system = ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);
    return system.getProcessCpuTime() / 1e9;
  }

  private static long bytes(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(Files::isRegularFile).mapToLong(file -> file.toFile().length()).sum();
    }
  }

  /** Arguments: the lake, and the folder to write to. Prints processor seconds and bytes. */
  public static void main(String[] arguments) throws IOException {
    SharedFolder shared = new SharedFolder(Path.of("shared"));
    try (Lake lake = Lake.open(Path.of(arguments[0]))) {
      PagesCost cost = new PagesCost(lake, shared);
      Path folder = Files.createDirectories(Path.of(arguments[1]));
      double begun = processorSeconds();
      cost.write(folder);
      double took = processorSeconds() - begun;
      System.out.printf(
          "%.1f %d %d%n",
          took, Files.size(folder.resolve("report").resolve("index.html")), bytes(folder));
    }
  }
}
