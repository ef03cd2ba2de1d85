package leadline.history;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import leadline.fleet.Movement;
import leadline.fleet.RecordKind;
import leadline.fleet.StockCount;
import leadline.history.SupplyProblem.StockDoesNotAddUp;
import leadline.origin.Origin;

/**
 * Compares each count of a part with the one before and the movements between them. A movement on
 * the day of a count may have come before it or after. Only where the vessel had booked a movement,
 * of any part, by the day of the earlier count: else no log was kept. Common practice, no source.
 */
final class StockQuestions {

  private final List<Movement> movements;

  private StockQuestions(List<Movement> movements) {
    this.movements = movements;
  }

  /**
   * @param lastDay of the history; later counts are not compared
   */
  static List<SupplyProblem> about(CurrentRecords current, LocalDate lastDay) {
    StockQuestions questions =
        new StockQuestions(current.rows(RecordKind.MOVEMENTS).stream().map(Movement::of).toList());
    Collection<List<StockCount>> ofParts =
        current.rows(RecordKind.STOCK).stream()
            .map(StockCount::of)
            .filter(count -> !count.countedOn().isAfter(lastDay))
            .sorted(Comparator.comparing(StockCount::countedOn))
            .collect(Collectors.groupingBy(StockCount::part, TreeMap::new, Collectors.toList()))
            .values();
    return ofParts.stream().flatMap(questions::between).toList();
  }

  /**
   * @param counts of one part, in time
   */
  private Stream<SupplyProblem> between(List<StockCount> counts) {
    return IntStream.range(1, counts.size())
        .mapToObj(i -> between(counts.get(i - 1), counts.get(i)))
        .flatMap(Optional::stream);
  }

  private Optional<SupplyProblem> between(StockCount before, StockCount after) {
    LocalDate from = before.countedOn();
    LocalDate to = after.countedOn();
    if (movements.stream().allMatch(movement -> movement.movedOn().isAfter(from))) {
      return Optional.empty();
    }
    List<Movement> booked =
        movements.stream()
            .filter(movement -> movement.part().equals(after.part()))
            .filter(movement -> !movement.movedOn().isBefore(from))
            .filter(movement -> !movement.movedOn().isAfter(to))
            .toList();
    List<Movement> certain =
        booked.stream()
            .filter(movement -> movement.movedOn().isAfter(from) && movement.movedOn().isBefore(to))
            .toList();
    long least = before.onHand() + cameIn(certain) - left(booked);
    long most = before.onHand() + cameIn(booked) - left(certain);
    return least <= after.onHand() && after.onHand() <= most
        ? Optional.empty()
        : Optional.of(
            new StockDoesNotAddUp(
                before,
                after,
                cameIn(booked),
                left(booked),
                least,
                most,
                origins(before, after, booked)));
  }

  private static long cameIn(List<Movement> movements) {
    return quantities(movements).filter(quantity -> quantity > 0).sum();
  }

  private static long left(List<Movement> movements) {
    return -quantities(movements).filter(quantity -> quantity < 0).sum();
  }

  private static LongStream quantities(List<Movement> movements) {
    return movements.stream().mapToLong(Movement::quantity);
  }

  private static List<Origin> origins(
      StockCount before, StockCount after, List<Movement> movements) {
    List<Origin> origins = new ArrayList<>(List.of(before.origin(), after.origin()));
    movements.forEach(movement -> origins.add(movement.origin()));
    return origins;
  }
}
