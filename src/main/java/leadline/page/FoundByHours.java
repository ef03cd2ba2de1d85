package leadline.page;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.joining;
import static java.util.stream.Collectors.mapping;
import static java.util.stream.Collectors.toList;
import static leadline.page.Tables.having;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadline.fleet.Clock;
import leadline.fleet.Component;
import leadline.fleet.FoundWord;
import leadline.fleet.Part;
import leadline.summary.FindingsByHours;
import leadline.summary.SharedColumns;
import leadline.summary.TableRow;

/** In which conditions each part of a component was found, by its hours since new. */
record FoundByHours(Tables tables, Component component) {

  /** None where no machine carries the component, or a run's program did not count them yet. */
  Optional<Section> section() {
    List<Block> blocks = blocks();
    return blocks.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Section("found-by-hours", "Conditions found, by hours since new", blocks));
  }

  List<Block> blocks() {
    List<Block> charts = new ArrayList<>();
    List<String> neverOpened = new ArrayList<>();
    for (Part part : component.parts()) {
      List<TableRow> rows = rows(part);
      if (rows.stream().anyMatch(row -> row.need(FindingsByHours.OPENED) > 0)) {
        charts.add(new FoundOfPart(component.name(), part.name(), rows).chart());
      } else if (!rows.isEmpty()) {
        neverOpened.add(Named.words(part.name()));
      }
    }
    List<Block> blocks = new ArrayList<>();
    if (!charts.isEmpty()) {
      blocks.add(
          new Block.Prose(
              "Of the parts opened at such hours, how many were found in each condition: a share at"
                  + " the openings made, not a chance. Where only what looks suspect is opened it"
                  + " says little of the rest. "
                  + whatFailedMeans()
                  + ofAnotherClock()));
    }
    blocks.addAll(charts);
    if (!neverOpened.isEmpty()) {
      blocks.add(
          new Block.Prose("On record as opened: none of " + String.join(", ", neverOpened) + "."));
    }
    return blocks;
  }

  private List<TableRow> rows(Part part) {
    return Subject.ofFleet(tables, component.name())
        .rows(FindingsByHours.SPEC, having(SharedColumns.PART, part.name()));
  }

  /** Parts alike in this in one sentence. */
  private String whatFailedMeans() {
    Map<String, List<String>> partsByWords =
        component.parts().stream()
            .filter(part -> !part.failed().isEmpty())
            .collect(
                groupingBy(
                    part -> Named.anyOf(part.failed().stream().sorted().map(FoundWord::word)),
                    LinkedHashMap::new,
                    mapping(part -> Named.words(part.name()), toList())));
    return partsByWords.entrySet().stream()
        .map(
            entry ->
                "Failed is %s, for %s."
                    .formatted(entry.getKey(), String.join(", ", entry.getValue())))
        .collect(joining(" "));
  }

  private String ofAnotherClock() {
    return component.parts().stream()
        .filter(part -> part.clock() != Clock.HOURS)
        .map(
            part ->
                " The %s ages by %s: its bands of hours tell nothing."
                    .formatted(Named.words(part.name()), part.clock().word()))
        .collect(joining());
  }
}
