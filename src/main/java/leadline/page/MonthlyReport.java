package leadline.page;

import java.util.ArrayList;
import java.util.List;
import leadline.fleet.Catalogue;
import leadline.publish.Issue;

/** The page that a superintendent opens on the first of the month. */
record MonthlyReport(Issue issue, Catalogue catalogue) {

  Page page() {
    Tables tables = Tables.of(issue);
    List<Section> sections = new ArrayList<>();
    sections.add(springs(tables));
    sections.add(Reading.cautions(issue));
    return new Page(
        "Fleet report " + issue.manifest().month(),
        Header.facts(issue),
        Reading.authority(issue),
        links(),
        sections);
  }

  private List<Page.Link> links() {
    return catalogue.components().stream()
        .map(component -> new Page.Link(component.name() + ".html", component.name()))
        .toList();
  }

  private Section springs(Tables tables) {
    return new Section(
        "springs", "Springs", new SpringFigures(tables, "fuel-injector", "nrv-spring").blocks());
  }
}
