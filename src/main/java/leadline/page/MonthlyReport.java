package leadline.page;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import leadline.fleet.Catalogue;
import leadline.fleet.Component;
import leadline.publish.Issue;
import leadline.summary.Level;

/** The page that a superintendent opens on the first of the month. */
record MonthlyReport(Issue issue, Catalogue catalogue) {

  Page page() {
    Tables tables = Tables.of(issue);
    List<String> components = catalogue.components().stream().map(Component::name).toList();
    List<Section> sections = new ArrayList<>();
    sections.add(decisions(tables));
    new DueSection(tables, components).section().ifPresent(sections::add);
    sections.add(new SpringSection(tables, catalogue).section());
    sections.add(
        new Section(
            "findings",
            "Findings by part",
            List.of(new Block.Table(FindingsByPart.table(tables, components)))));
    sections.add(
        new Section(
            "rates",
            "Rates and intervals",
            Stream.of(
                    List.of(Rates.fleet(tables, components)),
                    Rates.ofTheMonth(tables, components),
                    List.<Block>of(
                        new Block.Table(Rates.intervals(tables, components, Level.FLEET))))
                .flatMap(List::stream)
                .toList()));
    sections.add(new Reporting(tables).section());
    sections.add(Reading.cautions(issue));
    sections.add(Reading.howToRead());
    sections.add(Glossary.of(sections));
    return new Page(
        "Fleet report, " + Named.month(issue.manifest().month()),
        Header.facts(issue),
        Reading.authority(issue),
        components.stream()
            .map(component -> new Page.Link(component + ".html", Named.sentence(component)))
            .toList(),
        sections);
  }

  private Section decisions(Tables tables) {
    List<Block> blocks = new ArrayList<>();
    for (Decisions.Asked asked : Decisions.of(tables, catalogue)) {
      blocks.add(new Block.Heading(asked.heading()));
      blocks.add(new Block.Points(asked.points()));
    }
    if (blocks.isEmpty()) {
      blocks.add(new Block.Prose(Decisions.NONE));
    }
    return new Section("decisions", Decisions.HEADING, blocks);
  }
}
