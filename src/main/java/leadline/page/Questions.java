package leadline.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import leadline.publish.Numbers;
import leadline.summary.TableRow;

/** What the vessels are asked: the vessels with most questions by kind, and each one's oldest. */
record Questions(NamedTable queries) {

  private static final int MOST_VESSELS = 10;
  private static final int OLDEST = 5;

  List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    List<Block.Point> points = byVessel().map(Questions::point).toList();
    if (!points.isEmpty()) {
      blocks.add(new Block.Points(points));
    }
    blocks.add(
        new Block.Table(
            new NamedTable(queries.spec(), oldest())
                .view(
                    "questions",
                    "The "
                        + OLDEST
                        + " oldest questions to each vessel; the file has all "
                        + Numbers.count(queries.rows().size()),
                    "vessel",
                    "query",
                    "kind",
                    "record",
                    "question",
                    "settled_by",
                    "age_days")));
    return blocks;
  }

  /** The vessels with most questions, then by name. */
  private Stream<Map.Entry<String, Map<String, Long>>> byVessel() {
    Map<String, Map<String, Long>> kinds =
        queries.rows().stream()
            .collect(
                Collectors.groupingBy(
                    row -> queries.text(row, "vessel"),
                    LinkedHashMap::new,
                    Collectors.groupingBy(
                        row -> queries.text(row, "kind"), Collectors.counting())));
    return kinds.entrySet().stream()
        .sorted(
            Comparator.comparing(
                    (Map.Entry<String, Map<String, Long>> vessel) -> -total(vessel.getValue()))
                .thenComparing(Map.Entry.comparingByKey()))
        .limit(MOST_VESSELS);
  }

  private static long total(Map<String, Long> kinds) {
    return kinds.values().stream().mapToLong(Long::longValue).sum();
  }

  private static Block.Point point(Map.Entry<String, Map<String, Long>> vessel) {
    return Block.Point.of(
        "%s: %s, %s."
            .formatted(
                Named.data(vessel.getKey()),
                Named.counted(total(vessel.getValue()), "question"),
                vessel.getValue().entrySet().stream()
                    .sorted(
                        Map.Entry.<String, Long>comparingByValue()
                            .reversed()
                            .thenComparing(Map.Entry.comparingByKey()))
                    .map(kind -> kind.getKey() + " " + Numbers.count(kind.getValue()))
                    .collect(Collectors.joining(", "))));
  }

  /** As published: of each vessel the oldest first. */
  private List<TableRow> oldest() {
    Map<String, Integer> taken = new HashMap<>();
    return queries.rows().stream()
        .filter(row -> taken.merge(queries.text(row, "vessel"), 1, Integer::sum) <= OLDEST)
        .toList();
  }
}
