package leadline.page;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import leadline.fleet.Catalogue;
import leadline.publish.Documents;
import leadline.publish.Issue;
import leadline.publish.VesselFile;
import leadline.summary.DueList;
import leadline.summary.Level;
import leadline.summary.TableRow;
import leadline.summary.VesselColumns;

/** {@code briefing/VESSEL.html}: for each vessel, the overhauls that it does next. */
public final class Briefings implements Documents {

  private final Catalogue catalogue;
  private final List<TableRow> jobCards;

  /**
   * @param jobCards the run's rows of the table of that name
   */
  public Briefings(Catalogue catalogue, List<TableRow> jobCards) {
    this.catalogue = catalogue;
    this.jobCards = List.copyOf(jobCards);
  }

  @Override
  public void write(Issue issue, Path folder) throws IOException {
    Tables tables = Tables.of(issue).at(Level.FLEET);
    Map<String, List<TableRow>> batches = NextBatch.byVessel(tables.rows(DueList.SPEC));
    Map<String, List<TableRow>> cards =
        jobCards.stream().collect(Collectors.groupingBy(row -> row.need(VesselColumns.VESSEL)));
    Path briefing = Files.createDirectories(folder.resolve("briefing"));
    Html html = new Html();
    for (Map.Entry<String, List<TableRow>> batch : batches.entrySet()) {
      Briefing sheet =
          new VesselBriefing(
                  issue,
                  tables,
                  catalogue,
                  batch.getValue(),
                  cards.getOrDefault(batch.getKey(), List.of()))
              .briefing();
      Files.writeString(
          briefing.resolve(VesselFile.name(batch.getKey()) + ".html"),
          html.of(sheet),
          StandardCharsets.UTF_8);
    }
  }
}
