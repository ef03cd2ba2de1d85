package leadline.history;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
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

  private final Map<String, List<Movement>> movements;

  private StockQuestions(List<Movement> movements) {
    this.movements = movements.stream().collect(Collectors.groupingBy(Movement::part));
  }

  /**
   * What the counts raise.
   *
   * @param lastDay of the history; later counts are not compared
   */
  static List<SupplyProblem> about(CurrentRecords current, LocalDate lastDay) {
    List<Movement> movements =
        current.rows(RecordKind.MOVEMENTS).stream().map(Movement::of).toList();
    LocalDate logBegins =
        movements.stream().map(Movement::movedOn).min(LocalDate::compareTo).orElse(LocalDate.MAX);
    Map<String, List<StockCount>> counts =
        current.rows(RecordKind.STOCK).stream()
            .map(StockCount::of)
            .filter(count -> !count.countedOn().isBefore(logBegins))
            .filter(count -> !count.countedOn().isAfter(lastDay))
            .sorted(Comparator.comparing(StockCount::countedOn))
            .collect(Collectors.groupingBy(StockCount::part, TreeMap::new, Collectors.toList()));
    StockQuestions questions = new StockQuestions(movements);
    return counts.values().stream().flatMap(questions::between).toList();
  }

  /** Counts of one part, in time. */
  private Stream<SupplyProblem> between(List<StockCount> counts) {
    return IntStream.range(1, counts.size())
        .mapToObj(i -> between(counts.get(i - 1), counts.get(i)))
        .flatMap(Optional::stream);
  }

  private Optional<SupplyProblem> between(StockCount before, StockCount after) {
    LocalDate from = before.countedOn();
    LocalDate to = after.countedOn();
    List<Movement> booked =
        movements.getOrDefault(after.part(), List.of()).stream()
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
