package leadline.summary;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import leadline.fleet.Cells;
import leadline.fleet.FindingLayout;
import leadline.fleet.HoursLayout;
import leadline.fleet.MachineLayout;
import leadline.fleet.MovementLayout;
import leadline.fleet.OverhaulLayout;
import leadline.fleet.RecordKind;
import leadline.fleet.SourcedRow;
import leadline.fleet.StockLayout;
import leadline.history.CurrentRecords;
import leadline.origin.Origin;
import leadline.problem.Problem;

/** What the records that a vessel is asked about are of. */
final class QuerySubjects {

  /** A machine, component and part, as far as a record names them. */
  record Subject(Optional<String> machine, Optional<String> component, Optional<String> part) {

    private static final Subject NONE =
        new Subject(Optional.empty(), Optional.empty(), Optional.empty());
  }

  private final Map<Origin, Cells> rows = new HashMap<>();
  private final Map<String, Cells> overhauls = new HashMap<>();

  QuerySubjects(CurrentRecords records) {
    for (SourcedRow row : records.rows()) {
      Cells cells = row.cells();
      if (cells.kind() == RecordKind.RETURNS) {
        continue; // what it says stands as a version of another record
      }
      rows.put(row.origin(), cells);
      if (cells.kind() == RecordKind.OVERHAULS) {
        overhauls.put(cells.need(OverhaulLayout.OVERHAUL), cells);
      }
    }
  }

  Subject of(Origin origin) {
    return Optional.ofNullable(rows.get(origin)).map(this::of).orElse(Subject.NONE);
  }

  /** The overhaul in question, where the question is of an overhaul or of a finding of one. */
  Optional<String> overhaul(Problem problem) {
    return Optional.ofNullable(rows.get(problem.origin()))
        .flatMap(QuerySubjects::overhaul)
        .filter(
            overhaul ->
                problem.record().equals(overhaul) || problem.record().startsWith(overhaul + " "));
  }

  private static Optional<String> overhaul(Cells cells) {
    return switch (cells.kind()) {
      case OVERHAULS -> cells.find(OverhaulLayout.OVERHAUL);
      case FINDINGS -> cells.find(FindingLayout.OVERHAUL);
      case MACHINES, HOURS, STOCK, MOVEMENTS, RETURNS -> Optional.empty();
    };
  }

  private Subject of(Cells cells) {
    return switch (cells.kind()) {
      case MACHINES -> machine(cells.need(MachineLayout.MACHINE));
      case HOURS -> machine(cells.need(HoursLayout.MACHINE));
      case OVERHAULS -> overhaul(Optional.of(cells), Optional.empty());
      case FINDINGS ->
          overhaul(
              Optional.ofNullable(overhauls.get(cells.need(FindingLayout.OVERHAUL))),
              Optional.of(cells.need(FindingLayout.PART)));
      case MOVEMENTS ->
          overhaul(
              cells.find(MovementLayout.OVERHAUL).map(overhauls::get),
              Optional.of(cells.need(MovementLayout.PART)));
      case STOCK -> overhaul(Optional.empty(), Optional.of(cells.need(StockLayout.PART)));
      case RETURNS -> Subject.NONE;
    };
  }

  private static Subject machine(String machine) {
    return new Subject(Optional.of(machine), Optional.empty(), Optional.empty());
  }

  private static Subject overhaul(Optional<Cells> overhaul, Optional<String> part) {
    return new Subject(
        overhaul.map(cells -> cells.need(OverhaulLayout.MACHINE)),
        overhaul.map(cells -> cells.need(OverhaulLayout.COMPONENT)),
        part);
  }
}
