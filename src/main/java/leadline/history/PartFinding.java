package leadline.history;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import leadline.fleet.Action;
import leadline.fleet.Finding;
import leadline.fleet.FoundWord;
import leadline.fleet.OverhaulId;
import leadline.fleet.Part;
import leadline.fleet.Revealed;
import leadline.fleet.Statement;
import leadline.origin.Origin;
import leadline.quantity.RunningHours;

/**
 * What one visit's findings say of one part, taken together.
 *
 * @param rows by mode number; none where the part has no finding
 */
record PartFinding(Part part, List<Finding> rows) {

  Inspection inspection() {
    if (rows.isEmpty()) {
      return new Inspection.NoFinding();
    }
    Set<Statement> opened = all(Finding::opened);
    if (opened.contains(Statement.YES)) {
      return found().isEmpty()
          ? new Inspection.Unstated()
          : new Inspection.Opened(condition(), found());
    }
    return opened.contains(Statement.NO) ? new Inspection.NotOpened() : new Inspection.Unstated();
  }

  /** A failure that showed in service needs no opening to be known. */
  boolean isFailedInService() {
    return rows.stream()
        .filter(row -> row.revealed().filter(Revealed.IN_SERVICE::equals).isPresent())
        .flatMap(row -> row.found().stream())
        .anyMatch(part.failed()::contains);
  }

  /** Function lost: so found when opened, or shown in service. */
  boolean isFailed() {
    return isFailedInService()
        || (inspection() instanceof Inspection.Opened opened
            && opened.verdict() == Condition.FAILED);
  }

  boolean isRenewed() {
    return actions().contains(Action.RENEWED);
  }

  Set<FoundWord> found() {
    return all(Finding::found);
  }

  Set<Action> actions() {
    return all(Finding::action);
  }

  Optional<RunningHours> hoursSinceNew() {
    return rows.stream().map(Finding::hoursSinceNew).flatMap(Optional::stream).findFirst();
  }

  /** This and what another visit of the same overhaul says. */
  PartFinding and(PartFinding rest) {
    return new PartFinding(part, Stream.concat(rows.stream(), rest.rows.stream()).toList());
  }

  PartState stateAt(Optional<RunningHours> age) {
    return new PartState(part, inspection(), age, actions());
  }

  /** Where the first of the rows came from; there is one where anything is stated. */
  Origin origin() {
    return rows.get(0).origin();
  }

  OverhaulId overhaul() {
    return rows.get(0).overhaul();
  }

  private Condition condition() {
    Set<FoundWord> found = found();
    if (found.stream().anyMatch(part.failed()::contains)) {
      return Condition.FAILED;
    }
    if (found.contains(FoundWord.MISSING)) {
      return Condition.MISSING;
    }
    return found.stream().anyMatch(part.beyondLimit()::contains)
        ? Condition.BEYOND_LIMIT
        : Condition.WORKING;
  }

  private <T> Set<T> all(Function<Finding, Optional<T>> column) {
    return rows.stream().map(column).flatMap(Optional::stream).collect(Collectors.toSet());
  }
}
