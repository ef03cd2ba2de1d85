package leadline.history;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import leadline.fleet.Catalogue;
import leadline.fleet.Component;
import leadline.fleet.Overhaul;
import leadline.history.OverhaulsMissing.OverhaulsSilent;
import leadline.quantity.Period;
import leadline.quantity.RunningHours;

/**
 * Asks why overhauls are no longer recorded: since the last overhaul or test of any machine, one
 * ran more than one and a quarter policy intervals of the component of which the vessel has most
 * records. Each of its positions falls due within an interval, so that the first should have come
 * long before; the quarter is for overhauls that are late. Common practice, no source.
 */
final class SilentOverhauls {

  private final Overhaul last;
  private final Component component;
  private final Instant asOf;

  private SilentOverhauls(Overhaul last, Component component, Instant asOf) {
    this.last = last;
    this.component = component;
    this.asOf = asOf;
  }

  /**
   * @param asOf when the silence is judged
   * @param knownAt an overhaul dated later is an error, and no sign of life
   */
  static Optional<OverhaulsSilent> among(
      VesselRecords records,
      VesselHistory history,
      Catalogue catalogue,
      Instant asOf,
      Instant knownAt) {
    List<Overhaul> overhauls =
        records.overhauls().stream()
            .filter(overhaul -> !overhaul.removedAt().isAfter(knownAt))
            .toList();
    return overhauls.stream()
        .max(
            Comparator.comparing(Overhaul::removedAt)
                .thenComparing(overhaul -> overhaul.id().overhaul()))
        .flatMap(
            last ->
                mostOverhauled(overhauls, catalogue)
                    .map(component -> new SilentOverhauls(last, component, asOf)))
        .flatMap(silent -> silent.on(history.machines()));
  }

  /** The first by the catalogue of those that have as many. */
  private static Optional<Component> mostOverhauled(List<Overhaul> overhauls, Catalogue catalogue) {
    return catalogue.components().stream()
        .reduce((one, other) -> count(other, overhauls) > count(one, overhauls) ? other : one);
  }

  private static long count(Component component, List<Overhaul> overhauls) {
    return overhauls.stream()
        .filter(overhaul -> overhaul.component().equals(component.name()))
        .count();
  }

  /** By the machine that has run too long for longest. */
  private Optional<OverhaulsSilent> on(List<MachineHistory> machines) {
    return machines.stream()
        .filter(machine -> machine.machine().carries(component))
        .filter(machine -> SilentLogs.isInFleet(machine.machine(), asOf))
        .filter(machine -> isTooLong(machine, asOf))
        .map(this::question)
        .min(
            Comparator.comparing(OverhaulsSilent::due)
                .thenComparing(question -> question.machine().machine()));
  }

  private boolean isTooLong(MachineHistory machine, Instant by) {
    RunningHours limit = RunningHours.ofTenths(component.interval().tenths() * 5 / 4);
    return run(machine, by).isAbove(limit);
  }

  private RunningHours run(MachineHistory machine, Instant by) {
    return by.isAfter(last.removedAt())
        ? machine.exposureWithin(new Period(last.removedAt(), by)).hours()
        : RunningHours.ZERO;
  }

  private OverhaulsSilent question(MachineHistory machine) {
    return new OverhaulsSilent(
        last.id(),
        last.removedOn(),
        machine.machine().id(),
        component.name(),
        run(machine, asOf),
        component.interval(),
        tooLongSince(machine),
        last.origin());
  }

  /** The end of the first day by which it ran too long. */
  private Instant tooLongSince(MachineHistory machine) {
    long no = 0;
    long yes = Duration.between(last.removedAt(), asOf).toDays() + 1;
    while (yes - no > 1) {
      long middle = (no + yes) / 2;
      if (isTooLong(machine, afterDays(middle))) {
        yes = middle;
      } else {
        no = middle;
      }
    }
    return afterDays(yes);
  }

  private Instant afterDays(long days) {
    Instant moment = last.removedAt().plus(Duration.ofDays(days));
    return moment.isAfter(asOf) ? asOf : moment;
  }
}
