package leadline.job;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import leadline.history.ArrivedRow;
import leadline.history.Census;
import leadline.history.CurrentRecords;
import leadline.history.History;
import leadline.history.VesselHistory;
import leadline.lake.RowBlock;
import leadline.lake.VesselWriter;
import leadline.problem.Checked;
import leadline.problem.Problem;
import leadline.quantity.ReportMonth;
import leadline.summary.MonthlySummary;
import leadline.summary.VesselAccount;
import leadline.summary.VesselTables;
import org.apache.spark.api.java.function.FlatMapFunction;
import scala.Tuple2;

/** Rebuilds vessels from their records and counts them for the tables. */
record RebuildVessels(Rules rules, ReportMonth month, Instant knownAt, VesselWriter writer)
    implements FlatMapFunction<Iterator<Tuple2<String, Iterable<RowBlock>>>, Rebuilt> {

  @Override
  public Iterator<Rebuilt> call(Iterator<Tuple2<String, Iterable<RowBlock>>> vessels) {
    MonthlySummary summary = MonthlySummary.start(rules.catalogue(), month);
    VesselTables tables = new VesselTables(month, knownAt);
    Census census = Census.EMPTY;
    List<VesselHistory> histories = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    while (vessels.hasNext()) {
      for (VesselAccount account : accounts(unpacked(vessels.next()._2()))) {
        summary.add(account.history());
        tables.add(account);
        census = census.plus(account.records().census());
        histories.add(account.history());
        problems.addAll(account.problems());
      }
    }
    return List.of(
            new Rebuilt(
                summary,
                tables,
                census,
                ProblemCounts.of(problems),
                machinesObserved(histories),
                writer.write(histories, problems)))
        .iterator();
  }

  /** The accounts of vessels that exchange items. */
  private List<VesselAccount> accounts(List<ArrivedRow> rows) {
    SortedMap<String, List<ArrivedRow>> byVessel = new TreeMap<>();
    rows.forEach(
        row -> byVessel.computeIfAbsent(row.vessel(), first -> new ArrayList<>()).add(row));
    List<CurrentRecords> current = new ArrayList<>();
    byVessel.forEach((vessel, its) -> current.add(CurrentRecords.of(vessel, its)));
    List<Checked<VesselHistory, Problem>> histories =
        History.rebuild(
            current.stream().map(CurrentRecords::forHistory).toList(),
            rules.catalogue(),
            rules.hoursTolerance(),
            month.end());
    List<VesselAccount> accounts = new ArrayList<>();
    for (int i = 0; i < current.size(); i++) {
      accounts.add(
          new VesselAccount(current.get(i), histories.get(i).value(), histories.get(i).problems()));
    }
    return accounts;
  }

  private static List<ArrivedRow> unpacked(Iterable<RowBlock> blocks) {
    List<ArrivedRow> rows = new ArrayList<>();
    blocks.forEach(block -> block.forEach(rows::add));
    return rows;
  }

  private static long machinesObserved(List<VesselHistory> histories) {
    return histories.stream()
        .flatMap(vessel -> vessel.machines().stream())
        .filter(machine -> machine.observed().isPresent())
        .count();
  }
}
