package leadline.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import leadline.fleet.Answer;
import leadline.fleet.Cells;
import leadline.fleet.Column;
import leadline.fleet.ReturnLayout;
import leadline.fleet.ReturnLayout.Fill;
import leadline.fleet.ReturnedRow;
import leadline.problem.ReturnFault;
import leadline.problem.ReturnFault.NeededBeside;
import leadline.problem.ReturnFault.NothingAsked;
import leadline.problem.ReturnFault.NothingCorrected;
import leadline.problem.ReturnFault.OfAPart;
import leadline.problem.ReturnFault.OfTheOverhaul;
import leadline.problem.ReturnFault.RightAndChanged;

/** Which cells of a row of a return sheet go together. */
final class ReturnRules {

  private final Cells row;
  private final Optional<String> part;
  private final Optional<Answer> answer;
  private final boolean isDue;
  private final List<Column<?>> filled;

  private ReturnRules(Cells row) {
    this.row = row;
    this.part = row.find(ReturnLayout.PART);
    this.answer = row.find(ReturnLayout.ANSWER);
    this.isDue = row.need(ReturnLayout.ABOUT) == ReturnedRow.DUE_OVERHAUL;
    List<Fill<?>> position = isDue ? List.of() : ReturnLayout.POSITION;
    this.filled =
        Stream.of(position, ReturnLayout.OF_OVERHAUL, ReturnLayout.OF_FINDING)
            .flatMap(List::stream)
            .filter(fill -> fill.isIn(row))
            .<Column<?>>map(Fill::cell)
            .toList();
  }

  /** What the cells of a row, each right by itself, break together. */
  static List<ReturnFault> broken(Cells row) {
    return new ReturnRules(row).broken();
  }

  private List<ReturnFault> broken() {
    List<ReturnFault> faults = new ArrayList<>(ofAnotherRow());
    faults.addAll(againstTheAnswer());
    if (faults.isEmpty()) {
      Stream.concat(filled.stream(), answer.<Column<?>>map(any -> ReturnLayout.ANSWER).stream())
          .findFirst()
          .ifPresent(first -> faults.addAll(emptyBeside(first)));
    }
    return faults;
  }

  private List<ReturnFault> ofAnotherRow() {
    List<Fill<?>> ofFinding = ReturnLayout.OF_FINDING;
    return filled.stream()
        .filter(
            cell ->
                part.isPresent() != ofFinding.stream().anyMatch(fill -> fill.cell().equals(cell)))
        .<ReturnFault>map(
            cell ->
                part.isPresent()
                    ? new OfTheOverhaul(cell.name(), part.get())
                    : new OfAPart(cell.name()))
        .toList();
  }

  private List<ReturnFault> againstTheAnswer() {
    String column = ReturnLayout.ANSWER.name();
    if (answer.equals(Optional.of(Answer.AS_WRITTEN))) {
      return isDue
          ? List.of(new NothingAsked(column))
          : filled.stream().<ReturnFault>map(cell -> new RightAndChanged(cell.name())).toList();
    }
    return answer.equals(Optional.of(Answer.CORRECTED)) && filled.isEmpty()
        ? List.of(new NothingCorrected(column))
        : List.of();
  }

  private List<ReturnFault> emptyBeside(Column<?> filledIn) {
    List<Column<?>> needed = new ArrayList<>(List.of(ReturnLayout.ANSWERED_ON));
    if (!answer.equals(Optional.of(Answer.AS_WRITTEN))) {
      needed.add(ReturnLayout.OVERHAUL);
    }
    if (isDue && part.isEmpty() && !filled.isEmpty()) {
      needed.addAll(
          List.of(
              ReturnLayout.MACHINE,
              ReturnLayout.COMPONENT,
              ReturnLayout.DONE_ON,
              ReturnLayout.REASON));
    }
    return needed.stream()
        .filter(column -> row.find(column).isEmpty())
        .<ReturnFault>map(column -> new NeededBeside(column.name(), filledIn.name()))
        .toList();
  }
}
