package leadline.history;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadline.fleet.Item;
import leadline.fleet.Overhaul;
import leadline.fleet.Position;
import leadline.fleet.Reason;
import leadline.history.Stint.Beginning;
import leadline.history.Stint.Ending;
import leadline.problem.Checked;
import leadline.quantity.RunningHours;

/** Follows one position from item to item. */
final class PositionLog {

  private final Position position;
  private final String pool;
  private final MachineLog machine;
  private final List<OtherItemOut> problems = new ArrayList<>();
  private final List<Stint> stints = new ArrayList<>();

  private int unnamedItems = 0;
  private Item fitted;
  private Beginning beginning;
  private Instant fittedAt;
  private RunningHours fittedHours;
  private RunningHours lastHours;

  private PositionLog(
      Position position,
      String pool,
      MachineLog machine,
      List<PlacedVisit> visits,
      Optional<RunningHours> ageOfOriginal) {
    this.position = position;
    this.pool = pool;
    this.machine = machine;
    this.fitted = firstNamed(visits).orElseGet(this::nextUnnamed);
    this.beginning = new Beginning.Original(ageOfOriginal);
    this.fittedAt = machine.start();
    this.fittedHours = machine.hoursAt(fittedAt);
    this.lastHours = fittedHours;
  }

  /**
   * @param pool the vessels within which a serial is one item
   * @param visits to this position, in time
   * @param ageOfOriginal the age at the start of observation of the item there, if it was new to
   *     the position
   */
  static Checked<List<Stint>, OtherItemOut> stints(
      Position position,
      String pool,
      MachineLog machine,
      List<PlacedVisit> visits,
      Optional<RunningHours> ageOfOriginal) {
    PositionLog log = new PositionLog(position, pool, machine, visits, ageOfOriginal);
    for (int i = 0; i < visits.size(); i++) {
      PlacedVisit visit = visits.get(i).withHoursAtLeast(log.lastHours);
      Item removed = log.remove(visit);
      log.fit(visit, log.fittedBy(visit, removed, visits.subList(i + 1, visits.size())));
    }
    log.stopAtTheEnd();
    return new Checked<>(log.stints, log.problems);
  }

  private Item remove(PlacedVisit visit) {
    Item removed = visit.overhaul().removedSerial().map(this::named).orElse(fitted);
    Instant at = visit.removedAt();
    Instant from = fittedAt.isAfter(at) ? at : fittedAt;
    if (removed.equals(fitted)) {
      RunningHours run = visit.hours().max(fittedHours).minus(fittedHours);
      stints.add(
          new Stint(
              fitted, position, beginning, from, at, Optional.of(run), new Ending.Removed(visit)));
      return removed;
    }
    problems.add(
        new OtherItemOut(visit.overhaul(), position, fitted, beginning.overhaul(), removed));
    stints.add(
        new Stint(
            fitted, position, beginning, from, from, Optional.empty(), new Ending.OutOfSight()));
    stints.add(
        new Stint(
            removed,
            position,
            new Beginning.Unseen(),
            at,
            at,
            Optional.empty(),
            new Ending.Removed(visit)));
    return removed;
  }

  private void fit(PlacedVisit visit, Item item) {
    fitted = item;
    beginning = new Beginning.Fitted(visit);
    fittedAt = visit.fittedAt();
    lastHours = visit.hours();
    fittedHours =
        fittedAt.equals(visit.removedAt())
            ? visit.hours()
            : visit.hours().max(machine.hoursBy(fittedAt));
  }

  /** A test refits what it removed; an overhaul fits what it says, or what next comes out. */
  private Item fittedBy(PlacedVisit visit, Item removed, List<PlacedVisit> later) {
    Optional<Item> named = visit.overhaul().fittedSerial().map(this::named);
    if (named.isPresent()) {
      return named.get();
    }
    if (visit.overhaul().reason() == Reason.TEST_ONLY) {
      return removed;
    }
    return firstNamed(later)
        .orElseGet(() -> removed instanceof Item.AtPosition ? removed : nextUnnamed());
  }

  /** An item whose fitting lies after the end was not fitted again. */
  private void stopAtTheEnd() {
    Instant end = machine.end();
    if (!fittedAt.isAfter(end)) {
      RunningHours run = machine.hoursAt(end).max(fittedHours).minus(fittedHours);
      stints.add(
          new Stint(
              fitted,
              position,
              beginning,
              fittedAt,
              end,
              Optional.of(run),
              new Ending.StillFitted()));
    }
  }

  /** The item that the next visit names as removed. A test without serials names none. */
  private Optional<Item> firstNamed(List<PlacedVisit> next) {
    for (PlacedVisit visit : next) {
      Overhaul overhaul = visit.overhaul();
      Optional<String> serial = overhaul.removedSerial();
      if (overhaul.reason() != Reason.TEST_ONLY) {
        return serial.map(this::named);
      }
      if (serial.or(overhaul::fittedSerial).isPresent()) {
        return serial.or(overhaul::fittedSerial).map(this::named);
      }
    }
    return Optional.empty();
  }

  private Item named(String serial) {
    return new Item.Named(pool, position.component(), machine.entry().atFirst().model(), serial);
  }

  private Item nextUnnamed() {
    unnamedItems++;
    return new Item.AtPosition(position, unnamedItems);
  }
}
