package leadline.page;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/** What the columns of a page's tables mean. */
final class Glossary {

  private Glossary() {}

  /** Of the tables of these sections, in the order of the alphabet. */
  static Section of(List<Section> sections) {
    Map<String, Set<String>> meanings = new TreeMap<>();
    sections.stream()
        .flatMap(section -> section.blocks().stream())
        .flatMap(Glossary::heads)
        .forEach(
            head ->
                meanings
                    .computeIfAbsent(head.label(), label -> new LinkedHashSet<>())
                    .add(head.meaning()));
    return new Section(
        "columns",
        "What the columns mean",
        List.of(
            new Block.Terms(
                meanings.entrySet().stream()
                    .map(
                        column ->
                            new Page.Fact(column.getKey(), String.join("; or ", column.getValue())))
                    .toList())));
  }

  private static Stream<TableView.Head> heads(Block block) {
    if (block instanceof Block.Table shown) {
      return shown.table().heads().stream();
    }
    return block instanceof Block.Chart chart ? chart.table().heads().stream() : Stream.empty();
  }
}
