package leadline.job;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
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
      Tuple2<String, Iterable<RowBlock>> vessel = vessels.next();
      CurrentRecords records = CurrentRecords.of(vessel._1(), unpacked(vessel._2()), exports);
      Checked<VesselHistory, Problem> history =
          History.rebuild(
              records.forHistory(), rules.catalogue(), rules.hoursTolerance(), month.end());
      summary.add(history.value());
      List<Problem> met =
          Stream.concat(
                  records.problems().stream(),
                  ShipQuestions.about(
                      records, history, rules.catalogue(), month.end(), known.last())
                      .stream())
              .toList();
      tables.add(new VesselAccount(records, history.value(), met, known));
      census = census.plus(records.census());
      histories.add(history.value());
      problems.addAll(met);
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
