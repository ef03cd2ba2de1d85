package leadline.history;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import leadline.fleet.Action;
import leadline.fleet.Cells;
import leadline.fleet.FoundWord;
import leadline.fleet.MachineLayout;
import leadline.fleet.SourcedRow;
import leadline.quantity.Period;
import leadline.quantity.RunningHours;
import org.junit.jupiter.api.Test;

/**
 * A vessel bought on day 500 and sold on day 1500, that runs ten hours a day from day 0 to day
 * 2000. The first day in the fleet counts from its start, which is the end of day 499, at 4,990 h;
 * the last to its end, at 15,000 h.
 */
class SoldVesselTest {

  private static final Period IN_THE_FLEET = new Period(Ship.endOf(499), Ship.endOf(1500));

  private final Ship ship =
      Ship.tenHoursADay(
          row -> row.with(MachineLayout.VALID_FROM, Ship.day(500)),
          row -> row.with(MachineLayout.VALID_TO, Ship.day(1500)));

  @Test
  void hoursOutsideTheFleetDoNotCount() {
    MachineHistory engine = ship.rebuilt().engine();

    assertEquals(Optional.of(IN_THE_FLEET), engine.observed());
    assertEquals(
        RunningHours.ofHours(10_010),
        engine.exposureWithin(new Period(Ship.endOf(0), Ship.endOf(2000))).hours());
    assertEquals(
        RunningHours.ZERO,
        engine.exposureWithin(new Period(Ship.endOf(1600), Ship.endOf(1700))).hours());
  }

  @Test
  void overhaulsOutsideTheFleetDoNotCount() {
    ship.overhaul("before", 499)
        .overhaul("first", 500)
        .overhaul("last", 1500)
        .overhaul("after", 1501);

    assertEquals(List.of("first", "last"), ship.rebuilt().visits());
  }

  /** Renewed on day 1000, at 10,000 h, and 5,000 h old when the vessel leaves the fleet. */
  @Test
  void whatIsStillFittedAtTheSaleIsCensoredThere() {
    ship.overhaul("O1", 1000, Ship.removed("S1"), Ship.fitted("S2"))
        .finding("O1", "nozzle", Ship.opened(FoundWord.WORN, Action.RENEWED))
        .overhaul("after", 1700, Ship.removed("S2"), Ship.fitted("S3"));

    assertEquals(
        List.of(RunningHours.ofHours(5_000)),
        ship.rebuilt().engine().intervals().stream()
            .filter(interval -> interval.endedBy().isEmpty())
            .flatMap(interval -> interval.length().stream())
            .distinct()
            .toList());
  }

  /** Both rows are of the same machine; the one of the later batch has the ship's new name. */
  @Test
  void theLatestNameOfAVesselCounts() {
    CurrentRecords records =
        CurrentRecords.of(Ship.VESSEL, List.of(named(1, "Hesper Lark"), named(2, "Hesper Dunlin")));

    assertEquals(
        List.of("Hesper Dunlin"),
        records.rows().stream().map(row -> row.cells().need(MachineLayout.VESSEL_NAME)).toList());
  }

  private static ArrivedRow named(long batch, String name) {
    SourcedRow row =
        new Ship().engine(cells -> cells.with(MachineLayout.VESSEL_NAME, name)).rows().get(0);
    Cells cells = row.cells();
    return new ArrivedRow(batch, new SourcedRow(cells, row.origin()));
  }
}
