package leadline.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import leadline.fleet.Catalogue;
import leadline.fleet.Component;
import leadline.fleet.Part;
import leadline.publish.Issue;
import leadline.publish.Numbers;
import leadline.summary.DueList;
import leadline.summary.JobCards;
import leadline.summary.SharedColumns;
import leadline.summary.TableColumn;
import leadline.summary.TableRow;
import leadline.summary.VesselColumns;
import leadline.summary.VesselQueries;

/**
 * The briefing of one vessel.
 *
 * @param tables of the vessels and of the whole fleet
 * @param batch rows of the due list: of one machine, one at least
 * @param jobCards rows of the vessel
 */
record VesselBriefing(
    Issue issue,
    Tables tables,
    Catalogue catalogue,
    List<TableRow> batch,
    List<TableRow> jobCards) {

  /** Common practice, no source. */
  private static final List<String> WORKSHOP_POINTS =
      List.of(
          "Judge the mating surfaces first: light marks may be lapped, deep damage means renewal.",
          "After cleaning and oiling, parts move freely by hand; a slide sinks by its own weight.",
          "Use on each surface only the lubricant that the maker names; a paste with solids does not"
              + " replace a coating.",
          "Match alignment marks and locating pins.",
          "Keep lint and dust of the ventilation off open parts.",
          "Wipe the body dry before the pressure test, so that a leak shows.",
          "Slackening a nut that holds a spring is work for two.");

  private static final List<String> READING =
      List.of(
          "Chance: of the piece being found failed, in percent, at the hours when the position falls"
              + " due (now, if overdue), given those at which it was last shown to work; in brackets"
              + " what the 95 % limits at both ages allow.",
          "At such hours: no life is known that long; this is the share failed of those that the"
              + " fleet opened within the same 4,000 h. Fleet: nothing is known of its hours or at"
              + " them; the share failed of those opened at any. Over so many hours: the chance may"
              + " well be greater.",
          "NRV: non-return valve. \u2265: at least, where the hours since new are unknown.",
          "Laps: of this piece since it was renewed or came into sight.",
          "Have ready: one a position where renewed as a routine; else positions times the fleet's"
              + " renewals in its overhauls, rounded up, at least one. It may not be enough.",
          "Tick not opened where a part was not opened: that is neither sound nor broken.");

  private static final List<TableColumn<String>> PLACE =
      List.of(VesselColumns.MACHINE, SharedColumns.COMPONENT, VesselColumns.POSITION);

  Briefing briefing() {
    TableRow first = batch.get(0);
    String vessel = first.need(VesselColumns.VESSEL);
    List<Component> components =
        catalogue.components().stream().filter(component -> count(component) > 0).toList();
    return new Briefing(
        "Briefing, " + first.find(VesselColumns.VESSEL_NAME).orElse(vessel),
        facts(first, vessel),
        Reading.authority(issue),
        Reading.workshopCautions(issue),
        WORKSHOP_POINTS,
        components.stream()
            .map(
                component ->
                    new Kits(tables)
                        .of(component, count(component), new Kits.HoursAhead(cards(component))))
            .toList(),
        components.stream().flatMap(component -> positions(component).stream()).toList(),
        questions(vessel),
        READING,
        links(components));
  }

  private static List<Page.Link> links(List<Component> components) {
    return Stream.concat(
            Stream.of(new Page.Link("../report/index.html", "Fleet report")),
            components.stream()
                .map(
                    component ->
                        new Page.Link(
                            "../report/" + component.name() + ".html",
                            Named.sentence(component.name()) + ", whole fleet")))
        .toList();
  }

  private List<Page.Fact> facts(TableRow first, String vessel) {
    List<Page.Fact> facts = new ArrayList<>();
    facts.add(new Page.Fact("Vessel", vessel));
    facts.add(new Page.Fact("Machine", first.need(VesselColumns.MACHINE)));
    facts.add(new Page.Fact("Model", first.need(DueList.MODEL)));
    facts.add(new Page.Fact("Positions in this batch", Numbers.count(batch.size())));
    facts.add(new Page.Fact("Also overdue or due soon", others(vessel)));
    facts.addAll(
        Header.facts(issue).stream().filter(fact -> !fact.name().equals("Fleet")).toList());
    return facts;
  }

  private String others(String vessel) {
    String others =
        tables.rows(DueList.SPEC, Tables.having(VesselColumns.VESSEL, vessel)).stream()
            .filter(row -> DueList.COMING.contains(row.need(DueList.STANDING)))
            .filter(row -> !batch.contains(row))
            .collect(
                Collectors.groupingBy(
                    row -> row.need(VesselColumns.MACHINE), TreeMap::new, Collectors.counting()))
            .entrySet()
            .stream()
            .map(machine -> machine.getKey() + " " + Named.counted(machine.getValue(), "position"))
            .collect(Collectors.joining(", "));
    return others.isEmpty() ? "nothing" : others;
  }

  private long count(Component component) {
    return batch.stream().filter(row -> isOf(row, component)).count();
  }

  private static boolean isOf(TableRow row, Component component) {
    return row.need(SharedColumns.COMPONENT).equals(component.name());
  }

  private List<CardRow> cards(Component component) {
    return batch.stream()
        .filter(due -> isOf(due, component))
        .flatMap(due -> cards(component, due).stream())
        .toList();
  }

  /** Of one position, in the catalogue's order. */
  private List<CardRow> cards(Component component, TableRow due) {
    return jobCards.stream()
        .filter(row -> PLACE.stream().allMatch(column -> row.find(column).equals(due.find(column))))
        .map(row -> new CardRow(component, due, row))
        .toList();
  }

  private List<Briefing.Card> positions(Component component) {
    return batch.stream()
        .filter(due -> isOf(due, component))
        .map(due -> position(component, due))
        .toList();
  }

  private Briefing.Card position(Component component, TableRow due) {
    List<CardRow> cards = cards(component, due);
    CardFacts facts = new CardFacts(component, due, cards.stream().map(CardRow::row).toList());
    return new Briefing.Card(
        Named.sentence(component.name()) + " " + due.need(VesselColumns.POSITION),
        facts.facts(),
        component.parts().stream()
            .map(part -> line(component, part, cards, facts.lastOn().orElse("")))
            .toList(),
        Blanks.of(component));
  }

  /** A part has its boxes also where no item is fitted on record. */
  private Briefing.PartLine line(
      Component component, Part part, List<CardRow> cards, String lastOn) {
    return cards.stream()
        .filter(card -> card.part().equals(part.name()))
        .findFirst()
        .map(card -> card.line(PartInFleet.of(tables, component.name(), part.name()), lastOn))
        .orElseGet(
            () ->
                new Briefing.PartLine(
                    part.name(), new Cell.None(), "nothing on record", "\u2013", "\u2013"));
  }

  private List<Briefing.Question> questions(String vessel) {
    return tables.rows(VesselQueries.SPEC, Tables.having(VesselQueries.VESSEL, vessel)).stream()
        .filter(this::concernsTheBatch)
        .map(
            row ->
                new Briefing.Question(
                    row.need(VesselQueries.QUERY),
                    row.need(VesselQueries.RECORD),
                    row.need(VesselQueries.QUESTION)))
        .toList();
  }

  /** About the overhaul from which a position counts, or that last told of one of its parts. */
  private boolean concernsTheBatch(TableRow query) {
    Optional<String> overhaul = query.find(VesselQueries.OVERHAUL);
    return overhaul.isPresent()
        && (batch.stream().anyMatch(row -> row.find(DueList.OVERHAUL).equals(overhaul))
            || jobCards.stream()
                .filter(this::isInTheBatch)
                .anyMatch(row -> row.find(JobCards.LAST_OVERHAUL).equals(overhaul)));
  }

  private boolean isInTheBatch(TableRow card) {
    return batch.stream()
        .anyMatch(
            due -> PLACE.stream().allMatch(column -> card.find(column).equals(due.find(column))));
  }
}
