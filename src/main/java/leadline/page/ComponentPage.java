package leadline.page;

import java.util.List;
import leadline.fleet.Component;
import leadline.fleet.Part;
import leadline.publish.Issue;

/** All that the fleet's records tell about one component. */
record ComponentPage(Issue issue, Component component) {

  Page page() {
    Tables tables = Tables.of(issue);
    List<Block> springs =
        component.parts().stream()
            .filter(Part::isSpring)
            .flatMap(
                spring ->
                    new SpringFigures(tables, component.name(), spring.name()).blocks().stream())
            .toList();
    return new Page(
        component.name() + ", " + issue.manifest().month(),
        Header.facts(issue),
        Reading.authority(issue),
        List.of(new Page.Link("index.html", "Fleet report")),
        List.of(new Section("springs", "Springs", springs), Reading.cautions(issue)));
  }
}
