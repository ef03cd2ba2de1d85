package leadline.page;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import leadline.fleet.Catalogue;
import leadline.publish.Numbers;
import leadline.summary.IntakeLog;
import leadline.summary.TableRow;

/** What the vessels must be asked before their figures can be trusted. */
final class PoorReports implements Decision {

  private static final int MOST_VESSELS = 5;

  @Override
  public String heading() {
    return "Reports of the vessels";
  }

  @Override
  public List<Block.Point> points(Tables tables, Catalogue catalogue) {
    return Stream.of(questions(tables), refusals(tables)).flatMap(Optional::stream).toList();
  }

  private static Optional<Block.Point> questions(Tables tables) {
    return NamedTable.find(tables, "vessel_queries")
        .filter(queries -> !queries.rows().isEmpty())
        .map(
            queries -> {
              Map<String, Long> open =
                  queries.rows().stream()
                      .collect(
                          Collectors.groupingBy(
                              row -> queries.text(row, "vessel"),
                              TreeMap::new,
                              Collectors.counting()));
              return new Block.Point(
                  "%s questions to %s vessels are open; most of them to %s. Send each vessel its questions."
                      .formatted(
                          Numbers.count(queries.rows().size()),
                          Numbers.count(open.size()),
                          most(open)),
                  "#questions",
                  "Questions by vessel");
            });
  }

  private static String most(Map<String, Long> open) {
    return open.entrySet().stream()
        .sorted(
            Map.Entry.<String, Long>comparingByValue()
                .reversed()
                .thenComparing(Map.Entry.comparingByKey()))
        .limit(MOST_VESSELS)
        .map(vessel -> Named.data(vessel.getKey()) + " " + Numbers.count(vessel.getValue()))
        .collect(Collectors.joining(", "));
  }

  private static Optional<Block.Point> refusals(Tables tables) {
    List<TableRow> files = tables.rows(IntakeLog.SPEC);
    long refused = files.stream().mapToLong(file -> file.need(IntakeLog.ROWS_REFUSED)).sum();
    long read = files.stream().mapToLong(file -> file.need(IntakeLog.ROWS_READ)).sum();
    long affected = files.stream().filter(file -> file.need(IntakeLog.ROWS_REFUSED) > 0).count();
    return refused == 0
        ? Optional.empty()
        : Optional.of(
            new Block.Point(
                "%s of %s rows of the exports broke a rule and are in no figure; they are in %s of %s files. Have them mended and sent again."
                    .formatted(
                        Numbers.count(refused),
                        Numbers.count(read),
                        Numbers.count(affected),
                        Numbers.count(files.size())),
                "#refused-table",
                "Files with refused rows"));
  }
}
