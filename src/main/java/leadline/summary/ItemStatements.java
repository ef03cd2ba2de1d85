package leadline.summary;

import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import leadline.fleet.Cells;
import leadline.fleet.Column;
import leadline.fleet.Item;
import leadline.fleet.OverhaulId;
import leadline.fleet.OverhaulLayout;
import leadline.fleet.RecordKind;
import leadline.history.Visit;
import leadline.quantity.Days;

/** What the ship stated of whole items when it last wrote of them. */
record ItemStatements(Map<Item, Stated> pressures, Map<Item, Stated> laps) {

  private record Stated(double number, String on) {}

  static ItemStatements of(VesselAccount vessel) {
    return new ItemStatements(
        last(vessel, OverhaulLayout.OPENING_PRESSURE), last(vessel, OverhaulLayout.LAP_COUNT));
  }

  void in(TableRow.Builder row, Item item) {
    Optional.ofNullable(pressures.get(item))
        .ifPresent(
            stated ->
                row.with(JobCards.PRESSURE, stated.number())
                    .with(JobCards.PRESSURE_ON, stated.on()));
    Optional.ofNullable(laps.get(item))
        .ifPresent(
            stated ->
                row.with(JobCards.STATED_LAPS, stated.number())
                    .with(JobCards.STATED_LAPS_ON, stated.on()));
  }

  /** A statement is of the item that the visit removed: that is what was worked on. */
  private static Map<Item, Stated> last(VesselAccount vessel, Column<? extends Number> column) {
    Map<OverhaulId, Number> stated = stated(vessel, column);
    Map<Item, Stated> last = new HashMap<>();
    vessel.history().machines().stream()
        .flatMap(machine -> machine.visits().stream())
        .filter(visit -> stated.containsKey(visit.overhaul().id()))
        .sorted(Comparator.comparing(Visit::at))
        .forEach(visit -> visit.removed().ifPresent(item -> last.put(item, of(visit, stated))));
    return last;
  }

  private static Stated of(Visit visit, Map<OverhaulId, Number> stated) {
    return new Stated(
        stated.getOrDefault(visit.overhaul().id(), 0).doubleValue(), Days.asWritten(visit.at()));
  }

  private static Map<OverhaulId, Number> stated(
      VesselAccount vessel, Column<? extends Number> column) {
    Map<OverhaulId, Number> stated = new HashMap<>();
    vessel.records().rows(RecordKind.OVERHAULS).stream()
        .map(row -> row.cells())
        .forEach(
            (Cells cells) -> cells.find(column).ifPresent(number -> stated.put(id(cells), number)));
    return stated;
  }

  private static OverhaulId id(Cells cells) {
    return new OverhaulId(cells.need(OverhaulLayout.VESSEL), cells.need(OverhaulLayout.OVERHAUL));
  }
}
