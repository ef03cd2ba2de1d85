package leadline.history;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import leadline.fleet.Item;
import leadline.fleet.Overhaul;
import leadline.fleet.Position;
import leadline.history.ItemProblem.RemovedNotFitted;
import leadline.history.MistypedSerial.Cell;

/**
 * Asks about items that came out of where they were not fitted: what else is known of them, and
 * which one serial, corrected by one slip of typing, would leave no contradiction there.
 */
final class SerialQuestions {

  private final List<FollowedPosition> positions;

  private SerialQuestions(List<FollowedPosition> positions) {
    this.positions = positions;
  }

  /**
   * @param positions all of the vessels that exchange items
   */
  static List<RemovedNotFitted> among(List<FollowedPosition> positions) {
    SerialQuestions questions = new SerialQuestions(positions);
    return positions.stream()
        .flatMap(
            position -> position.contradictions().stream().map(met -> questions.ask(met, position)))
        .toList();
  }

  private RemovedNotFitted ask(OtherItemOut met, FollowedPosition position) {
    return RemovedNotFitted.of(met, lastRecordOf(met), mistyped(met, position));
  }

  /** Where the removed item was by its other records: the last before, else the first after. */
  private Optional<Stint> lastRecordOf(OtherItemOut met) {
    Instant at = met.removal().removedAt();
    List<Stint> others =
        positions.stream()
            .flatMap(position -> position.stintsOf(met.removed()))
            .filter(stint -> !endsWith(stint, met.removal()))
            .sorted(Stint.IN_TIME)
            .toList();
    return others.stream()
        .filter(stint -> stint.from().isBefore(at))
        .max(Comparator.comparing(Stint::from))
        .or(() -> others.stream().findFirst());
  }

  private static boolean endsWith(Stint stint, Overhaul overhaul) {
    return stint.ending().overhaul().filter(overhaul::equals).isPresent();
  }

  /** The corrections that leave the fewest contradictions, where that is fewer than there are. */
  private List<MistypedSerial> mistyped(OtherItemOut met, FollowedPosition position) {
    if (!(met.believed() instanceof Item.Named believed
        && met.removed() instanceof Item.Named removed
        && MistypedSerial.isOneSlip(believed.serial(), removed.serial()))) {
      return List.of();
    }
    List<MistypedSerial> candidates = new ArrayList<>();
    candidates.add(
        new MistypedSerial(met.removal(), Cell.REMOVED, removed.serial(), believed.serial()));
    met.fittedBy()
        .filter(fitting -> fitting.fittedSerial().filter(believed.serial()::equals).isPresent())
        .map(
            fitting ->
                new MistypedSerial(fitting, Cell.FITTED, believed.serial(), removed.serial()))
        .ifPresent(candidates::add);
    long now = contradictions(position, believed, removed);
    List<Long> then =
        candidates.stream()
            .map(each -> position.with(each.corrected()))
            .map(corrected -> contradictions(corrected, believed, removed))
            .toList();
    long fewest = then.stream().mapToLong(count -> count).min().orElse(now);
    return Stream.iterate(0, i -> i < candidates.size(), i -> i + 1)
        .filter(i -> then.get(i) == fewest && fewest < now)
        .map(candidates::get)
        .toList();
  }

  /** How often the records contradict each other at the position, or about either item. */
  private long contradictions(FollowedPosition position, Item one, Item other) {
    return position.contradictions().size() + clashes(position, one) + clashes(position, other);
  }

  private long clashes(FollowedPosition instead, Item item) {
    Position changed = instead.position();
    return ItemStints.clashes(
        positions.stream()
            .map(each -> each.position().equals(changed) ? instead : each)
            .flatMap(position -> position.stintsOf(item))
            .toList());
  }
}
