package leadline.history;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import leadline.fleet.Action;
import leadline.fleet.Finding;
import leadline.fleet.FindingLayout;
import leadline.fleet.Movement;
import leadline.fleet.Overhaul;
import leadline.fleet.OverhaulId;
import leadline.fleet.RecordKind;
import leadline.fleet.SourcedRow;
import leadline.history.SupplyProblem.MovementWithoutRenewal;
import leadline.history.SupplyProblem.QuantitiesDisagree;
import leadline.history.SupplyProblem.RenewalWithoutMovement;

/**
 * Compares what was renewed with what left the stock, part by part. A movement that names its
 * overhaul belongs to that one; any other serves the renewals within 30 days of it, the nearest
 * first. Only where the vessel keeps a stock log of the part: from the part's first movement out to
 * the vessel's last movement of any part. Common practice, no source.
 */
final class SupplyQuestions {

  private static final int WINDOW_DAYS = 30;

  private final Map<OverhaulId, LocalDate> dayOfOverhaul;
  private final Map<String, List<Renewal>> renewals;
  private final LocalDate lastMovement;
  private final LocalDate lastDay;

  private SupplyQuestions(CurrentRecords current, List<Movement> movements, LocalDate lastDay) {
    VesselRecords records = current.forHistory();
    this.lastDay = lastDay;
    this.lastMovement =
        movements.stream().map(Movement::movedOn).max(LocalDate::compareTo).orElse(LocalDate.MIN);
    this.dayOfOverhaul =
        records.overhauls().stream().collect(Collectors.toMap(Overhaul::id, Overhaul::removedOn));
    this.renewals =
        current.rows(RecordKind.FINDINGS).stream()
            .filter(
                row -> row.cells().find(FindingLayout.ACTION).equals(Optional.of(Action.RENEWED)))
            .flatMap(row -> renewal(row).stream())
            .sorted(
                Comparator.comparing((Renewal renewal) -> renewal.day).thenComparing(Renewal::id))
            .collect(Collectors.groupingBy(renewal -> renewal.finding.part()));
  }

  /**
   * @param lastDay of the history; a window that is still open then leads to no question
   */
  static List<SupplyProblem> about(CurrentRecords current, LocalDate lastDay) {
    List<Movement> movements =
        current.rows(RecordKind.MOVEMENTS).stream()
            .map(Movement::of)
            .filter(movement -> !movement.movedOn().isAfter(lastDay))
            .toList();
    SupplyQuestions questions = new SupplyQuestions(current, movements, lastDay);
    return movements.stream()
        .filter(movement -> movement.quantity() < 0)
        .sorted(Comparator.comparing(Movement::movedOn).thenComparing(Movement::name))
        .collect(Collectors.groupingBy(Movement::part, TreeMap::new, Collectors.toList()))
        .values()
        .stream()
        .flatMap(out -> questions.ofPart(out).stream())
        .filter(problem -> !problem.windowEnd().isAfter(lastDay))
        .toList();
  }

  private Optional<Renewal> renewal(SourcedRow row) {
    Finding finding = Finding.of(row);
    return Optional.ofNullable(dayOfOverhaul.get(finding.overhaul()))
        .filter(day -> !day.isAfter(lastDay))
        .map(day -> new Renewal(finding, day, row.cells().find(FindingLayout.FITTED_COUNT)));
  }

  /**
   * @param out the part's movements out of stock, in time; at least one
   */
  private List<SupplyProblem> ofPart(List<Movement> out) {
    LocalDate begins = out.get(0).movedOn();
    List<Renewal> renewed = renewals.getOrDefault(out.get(0).part(), List.of());
    Map<OverhaulId, Renewal> byOverhaul =
        renewed.stream()
            .collect(
                Collectors.toMap(
                    renewal -> renewal.finding.overhaul(), Function.identity(), (one, two) -> one));
    List<SupplyProblem> problems = new ArrayList<>();
    List<Withdrawal> withdrawals = out.stream().map(Withdrawal::new).toList();
    for (Withdrawal withdrawal : withdrawals) {
      withdrawal
          .movement
          .overhaul()
          .flatMap(overhaul -> Optional.ofNullable(byOverhaul.get(overhaul)))
          .ifPresent(renewal -> problems.addAll(takeAll(withdrawal, renewal)));
    }
    for (Renewal renewal : renewed) {
      withdrawals.stream()
          .filter(withdrawal -> withdrawal.movement.overhaul().isEmpty())
          .filter(withdrawal -> daysApart(withdrawal, renewal) <= WINDOW_DAYS)
          .sorted(Comparator.comparing(withdrawal -> daysApart(withdrawal, renewal)))
          .forEach(renewal::take);
    }
    renewed.stream()
        .filter(renewal -> renewal.missing > 0)
        .filter(renewal -> !renewal.day.isBefore(begins) && !renewal.day.isAfter(lastMovement))
        .map(SupplyQuestions::question)
        .forEach(problems::add);
    withdrawals.stream()
        .filter(withdrawal -> withdrawal.left > 0)
        .map(SupplyQuestions::question)
        .forEach(problems::add);
    return problems;
  }

  private static List<QuantitiesDisagree> takeAll(Withdrawal withdrawal, Renewal renewal) {
    long moved = withdrawal.left;
    boolean disagrees = renewal.fitted.filter(fitted -> fitted != moved).isPresent();
    withdrawal.left = 0;
    renewal.missing = 0;
    return disagrees
        ? List.of(
            new QuantitiesDisagree(
                renewal.finding.overhaul(),
                renewal.finding.part(),
                renewal.fitted.orElseThrow(),
                moved,
                later(renewal.day, withdrawal.movement.movedOn()).plusDays(WINDOW_DAYS),
                renewal.finding.origin(),
                List.of(renewal.finding.origin(), withdrawal.movement.origin())))
        : List.of();
  }

  private static RenewalWithoutMovement question(Renewal renewal) {
    return new RenewalWithoutMovement(
        renewal.finding.overhaul(),
        renewal.finding.part(),
        renewal.missing,
        renewal.day.plusDays(WINDOW_DAYS),
        renewal.finding.origin());
  }

  private static MovementWithoutRenewal question(Withdrawal withdrawal) {
    Movement movement = withdrawal.movement;
    return new MovementWithoutRenewal(
        movement.vessel(),
        movement.name(),
        movement.part(),
        movement.movedOn(),
        withdrawal.left,
        movement.movedOn().plusDays(WINDOW_DAYS),
        movement.origin());
  }

  private static long daysApart(Withdrawal withdrawal, Renewal renewal) {
    return Math.abs(ChronoUnit.DAYS.between(withdrawal.movement.movedOn(), renewal.day));
  }

  private static LocalDate later(LocalDate one, LocalDate other) {
    return one.isAfter(other) ? one : other;
  }

  /** A renewal, and how many of its pieces are not accounted for yet. */
  private static final class Renewal {
    private final Finding finding;
    private final LocalDate day;
    private final Optional<Long> fitted;
    private long missing;

    Renewal(Finding finding, LocalDate day, Optional<Long> fitted) {
      this.finding = finding;
      this.day = day;
      this.fitted = fitted;
      this.missing = fitted.orElse(1L);
    }

    String id() {
      return finding.overhaul().overhaul() + " " + finding.modeNumber();
    }

    void take(Withdrawal withdrawal) {
      long taken = Math.min(missing, withdrawal.left);
      missing -= taken;
      withdrawal.left -= taken;
    }
  }

  /** Pieces that left the stock, and how many of them are not accounted for yet. */
  private static final class Withdrawal {
    private final Movement movement;
    private long left;

    Withdrawal(Movement movement) {
      this.movement = movement;
      this.left = -movement.quantity();
    }
  }
}
