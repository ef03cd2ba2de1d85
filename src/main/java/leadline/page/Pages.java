package leadline.page;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import leadline.fleet.Catalogue;
import leadline.fleet.Component;
import leadline.publish.Documents;
import leadline.publish.Issue;

/** The monthly report, {@code report/index.html}, and a page for each component beside it. */
public final class Pages implements Documents {

  private final Catalogue catalogue;

  public Pages(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  @Override
  public void write(Issue issue, Path folder) throws IOException {
    Path report = Files.createDirectory(folder.resolve("report"));
    Html html = new Html();
    write(html.of(new MonthlyReport(issue, catalogue).page()), report.resolve("index.html"));
    for (Component component : catalogue.components()) {
      Page page = new ComponentPage(issue, component).page();
      write(html.of(page), report.resolve(component.name() + ".html"));
    }
  }

  private static void write(String html, Path file) throws IOException {
    Files.writeString(file, html, StandardCharsets.UTF_8);
  }
}
