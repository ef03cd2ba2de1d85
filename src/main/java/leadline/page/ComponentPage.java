package leadline.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadline.fleet.Component;
import leadline.fleet.Part;
import leadline.publish.Issue;
import leadline.summary.Level;

/** All that the fleet's records tell about one component. */
record ComponentPage(Issue issue, Component component) {

  Page page() {
    Tables tables = Tables.of(issue);
    String name = component.name();
    List<Section> sections = new ArrayList<>();
    sections.add(new Section("rates", "Breakdowns", List.of(Rates.vessels(tables, name))));
    springs(tables).ifPresent(sections::add);
    sections.add(new Section("findings", "Findings by part", FindingsByPart.chart(tables, name)));
    new FoundByHours(tables, component).section().ifPresent(sections::add);
    sections.add(new Section("lives", "Lives of the parts", new Lives(tables, component).blocks()));
    sections.add(
        new Section(
            "intervals",
            "Hours between overhauls",
            List.of(
                new Block.Table(
                    Rates.intervals(tables, List.of(name), Level.FLEET, Level.MODEL)))));
    sections.add(Assumptions.section());
    sections.add(Reading.cautions(issue));
    sections.add(Reading.howToRead());
    sections.add(Glossary.of(sections));
    return new Page(
        Named.sentence(name) + ", " + Named.month(issue.manifest().month()),
        Header.facts(issue),
        Reading.authority(issue),
        List.of(new Page.Link("index.html", "Fleet report")),
        sections);
  }

  private Optional<Section> springs(Tables tables) {
    List<Block> blocks =
        component.parts().stream()
            .filter(Part::isSpring)
            .flatMap(
                spring ->
                    new SpringFigures(tables, component.name(), spring.name()).blocks().stream())
            .toList();
    return blocks.isEmpty()
        ? Optional.empty()
        : Optional.of(new Section("springs", "Springs", blocks));
  }
}
