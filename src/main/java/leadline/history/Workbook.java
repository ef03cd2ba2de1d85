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
  private final Map<ItemPart, RunningHours> ageDifferences = new HashMap<>();
  private final Map<MachineId, List<Visit>> visits = new HashMap<>();
  private final Map<MachineId, List<OverhaulInterval>> intervals = new HashMap<>();
  private final Map<MachineId, List<PartLife>> lives = new HashMap<>();
  private final Map<MachineId, List<PositionStanding>> standings = new HashMap<>();
  private final Map<Position, List<ShutPart>> shut = new HashMap<>();
  private final Map<Position, List<PartStanding>> fitted = new HashMap<>();

  private record ItemPart(Item item, String part) {}

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

  /**
   * Reports a stated age that differs from the one rebuilt. One that differs by as much as at the
   * overhaul before is the same contradiction, which was reported.
   */
  void compareAges(Item item, PartFinding finding, Optional<RunningHours> rebuilt) {
    Optional<RunningHours> stated = finding.hoursSinceNew();
    if (stated.isPresent() && rebuilt.isPresent()) {
      RunningHours difference = stated.get().minus(rebuilt.get());
      RunningHours before =
          Optional.ofNullable(
                  ageDifferences.put(new ItemPart(item, finding.part().name()), difference))
              .orElse(RunningHours.ZERO);
      if (difference.differenceTo(RunningHours.ZERO).isAbove(tolerance)
          && difference.differenceTo(before).isAbove(tolerance)) {
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

  /** A visit of which no item's hours or parts follow. */
  void addOfNoItem(PlacedVisit visit) {
    add(
        visit,
        Optional.empty(),
        visit.component().parts().stream()
            .map(part -> finding(visit, part).stateAt(Optional.empty()))
            .toList());
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

  void add(Position position, List<ShutPart> closed, List<PartStanding> parts) {
    shut.put(position, closed);
    fitted.put(position, parts);
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
        standings.getOrDefault(id, List.of()).stream().map(this::withParts).toList());
  }

  private PositionStanding withParts(PositionStanding standing) {
    return standing.with(
        shut.getOrDefault(standing.position(), List.of()),
        fitted.getOrDefault(standing.position(), List.of()));
  }

  private static <T> void add(Map<MachineId, List<T>> lists, MachineId machine, T entry) {
    lists.computeIfAbsent(machine, id -> new ArrayList<>()).add(entry);
  }
}
