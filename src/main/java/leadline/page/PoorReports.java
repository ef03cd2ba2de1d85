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
        .map(queries -> questions(tables, byVessel(queries)));
  }

  private static Map<String, Long> byVessel(NamedTable queries) {
    return queries.rows().stream()
        .collect(
            Collectors.groupingBy(
                row -> queries.text(row, "vessel"), TreeMap::new, Collectors.counting()));
  }

  private static Block.Point questions(Tables tables, Map<String, Long> open) {
    long questions = open.values().stream().mapToLong(Long::longValue).sum();
    List<Map.Entry<String, Long>> most = most(open);
    return new Block.Point(
        "%s to %s %s open%s %s. %s"
            .formatted(
                Named.counted(questions, "question"),
                Named.counted(open.size(), "vessel"),
                questions == 1 ? "is" : "are",
                open.size() > most.size() ? "; most of them to" : ":",
                most.stream()
                    .map(vessel -> Named.data(vessel.getKey()) + " " + count(vessel))
                    .collect(Collectors.joining(", ")),
                open.size() == 1
                    ? "Send the vessel its return sheet."
                    : "Send each vessel its return sheet."),
        most.stream().map(Map.Entry::getKey).flatMap(vessel -> month(tables, vessel)).toList());
  }

  private static String count(Map.Entry<String, Long> vessel) {
    return Numbers.count(vessel.getValue());
  }

  private static List<Map.Entry<String, Long>> most(Map<String, Long> open) {
    return open.entrySet().stream()
        .sorted(
            Map.Entry.<String, Long>comparingByValue()
                .reversed()
                .thenComparing(Map.Entry.comparingByKey()))
        .limit(MOST_VESSELS)
        .toList();
  }

  /** To the vessel's row of the month, where it has one. */
  private static Stream<Page.Link> month(Tables tables, String vessel) {
    return NamedTable.find(tables, "fleet_month").stream()
        .flatMap(month -> month.rows().stream().map(row -> month.text(row, "vessel")))
        .filter(vessel::equals)
        .map(name -> new Page.Link("#" + RowIds.vessel(name), Named.data(name)));
  }

  private static Optional<Block.Point> refusals(Tables tables) {
    List<TableRow> files = tables.rows(IntakeLog.SPEC);
    long refused = files.stream().mapToLong(file -> file.need(IntakeLog.ROWS_REFUSED)).sum();
    return refused == 0 ? Optional.empty() : Optional.of(refusals(files, refused));
  }

  private static Block.Point refusals(List<TableRow> files, long refused) {
    long read = files.stream().mapToLong(file -> file.need(IntakeLog.ROWS_READ)).sum();
    long affected = files.stream().filter(file -> file.need(IntakeLog.ROWS_REFUSED) > 0).count();
    String sentence =
        refused == 1
            ? "%s of %s of the exports broke a rule and is in no figure; it is in %s of %s. Have it mended and sent again."
            : "%s of %s of the exports broke a rule and are in no figure; they are in %s of %s. Have them mended and sent again.";
    return new Block.Point(
        sentence.formatted(
            Numbers.count(refused),
            Named.counted(read, "row"),
            Numbers.count(affected),
            Named.counted(files.size(), "file")),
        List.of(
            new Page.Link(
                "#" + RowIds.REFUSED, Named.counted(affected, "file") + " with refused rows")));
  }
}
