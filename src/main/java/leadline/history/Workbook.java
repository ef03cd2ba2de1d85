package leadline.history;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadline.fleet.Item;
import leadline.fleet.MachineId;
import leadline.fleet.Part;
import leadline.fleet.Position;
import leadline.history.FindingProblem.AgesDisagree;
import leadline.history.PositionStanding.ShutPart;
import leadline.origin.FileDigest;
import leadline.problem.Problem;
import leadline.quantity.RunningHours;

/** The findings of one vessel, and what has been made out so far. */
final class Workbook {

  private static final Comparator<Visit> IN_TIME =
      Comparator.comparing(Visit::at).thenComparing(visit -> visit.overhaul().id().overhaul());

  private static final Comparator<Problem> BY_ORIGIN =
      Comparator.<Problem, FileDigest>comparing(problem -> problem.origin().digest())
          .thenComparing(problem -> problem.origin().line())
          .thenComparing(Problem::kind)
          .thenComparing(Problem::sentence);

  private final FindingsByOverhaul findings;
  private final RunningHours tolerance;
  private final List<Problem> problems = new ArrayList<>();
  private final Map<MachineId, List<Visit>> visits = new HashMap<>();
  private final Map<MachineId, List<OverhaulInterval>> intervals = new HashMap<>();
  private final Map<MachineId, List<PartLife>> lives = new HashMap<>();
  private final Map<MachineId, List<PositionStanding>> standings = new HashMap<>();
  private final Map<Position, List<ShutPart>> shut = new HashMap<>();

  Workbook(FindingsByOverhaul findings, RunningHours tolerance) {
    this.findings = findings;
    this.tolerance = tolerance;
  }

  FindingsByOverhaul findings() {
    return findings;
  }

  void report(List<? extends Problem> met) {
    problems.addAll(met);
  }

  /** By where they came from. */
  List<Problem> problems() {
    return problems.stream().sorted(BY_ORIGIN).toList();
  }

  PartFinding finding(PlacedVisit visit, Part part) {
    return findings.of(visit.overhaul().id(), part);
  }

  /** Reports a stated age that differs from the one rebuilt. */
  void compareAges(PartFinding finding, Optional<RunningHours> rebuilt) {
    Optional<RunningHours> stated = finding.hoursSinceNew();
    if (stated.isPresent() && rebuilt.isPresent()) {
      if (stated.get().differenceTo(rebuilt.get()).isAbove(tolerance)) {
        problems.add(
            new AgesDisagree(
                finding.overhaul(),
                finding.part().name(),
                stated.get(),
                rebuilt.get(),
                finding.origin()));
      }
    }
  }

  void add(PlacedVisit visit, Optional<Item> removed, List<PartState> parts) {
    add(
        visits,
        visit.overhaul().machine(),
        new Visit(
            visit.overhaul(),
            visit.component(),
            visit.position(),
            removed,
            visit.removedAt(),
            visit.hours(),
            parts));
  }

  void add(MachineId machine, OverhaulInterval interval) {
    add(intervals, machine, interval);
  }

  void add(MachineId machine, PartLife life) {
    add(lives, machine, life);
  }

  void add(PositionStanding standing) {
    add(standings, standing.position().machine(), standing);
  }

  void add(Position position, List<ShutPart> parts) {
    shut.put(position, parts);
  }

  MachineHistory history(MachineLog machine) {
    MachineId id = machine.entry().id();
    return new MachineHistory(
        machine.entry(),
        machine.hours(),
        machine.observed(),
        visits.getOrDefault(id, List.of()).stream().sorted(IN_TIME).toList(),
        intervals.getOrDefault(id, List.of()),
        lives.getOrDefault(id, List.of()),
        standings.getOrDefault(id, List.of()).stream().map(this::withShutParts).toList());
  }

  private PositionStanding withShutParts(PositionStanding standing) {
    return standing.with(shut.getOrDefault(standing.position(), List.of()));
  }

  private static <T> void add(Map<MachineId, List<T>> lists, MachineId machine, T entry) {
    lists.computeIfAbsent(machine, id -> new ArrayList<>()).add(entry);
  }
}
