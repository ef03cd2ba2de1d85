package leadline.job;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import leadline.history.ArrivedRow;
import leadline.history.Census;
import leadline.history.CurrentRecords;
import leadline.history.Exports;
import leadline.history.History;
import leadline.history.ShipQuestions;
import leadline.history.VesselHistory;
import leadline.lake.RowBlock;
import leadline.lake.VesselWriter;
import leadline.origin.BatchTimes;
import leadline.problem.Checked;
import leadline.problem.Problem;
import leadline.quantity.ReportMonth;
import leadline.summary.MonthlySummary;
import leadline.summary.VesselAccount;
import leadline.summary.VesselTables;
import org.apache.spark.api.java.function.FlatMapFunction;
import scala.Tuple2;

/** Rebuilds vessels from their records and counts them for the tables. */
record RebuildVessels(
    Rules rules, ReportMonth month, BatchTimes known, Exports exports, VesselWriter writer)
    implements FlatMapFunction<Iterator<Tuple2<String, Iterable<RowBlock>>>, Rebuilt> {

  @Override
  public Iterator<Rebuilt> call(Iterator<Tuple2<String, Iterable<RowBlock>>> vessels) {
    MonthlySummary summary = MonthlySummary.start(rules.catalogue(), month);
    VesselTables tables = new VesselTables(month, known.last());
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
    byVessel.forEach((vessel, its) -> current.add(CurrentRecords.of(vessel, its, exports)));
    List<Checked<VesselHistory, Problem>> histories =
        History.rebuild(
            current.stream().map(CurrentRecords::forHistory).toList(),
            rules.catalogue(),
            rules.hoursTolerance(),
            month.end());
    List<VesselAccount> accounts = new ArrayList<>();
    for (int i = 0; i < current.size(); i++) {
      accounts.add(account(current.get(i), histories.get(i)));
    }
    return accounts;
  }

  private VesselAccount account(CurrentRecords records, Checked<VesselHistory, Problem> history) {
    List<Problem> questions =
        ShipQuestions.about(records, history, rules.catalogue(), month.end(), known.last());
    return new VesselAccount(
        records,
        history.value(),
        Stream.concat(records.problems().stream(), questions.stream()).toList(),
        known);
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
