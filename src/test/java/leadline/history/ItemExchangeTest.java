package leadline.history;

import static leadline.history.Ship.fitted;
import static leadline.history.Ship.opened;
import static leadline.history.Ship.removed;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import leadline.fleet.Action;
import leadline.fleet.FoundWord;
import leadline.fleet.MachineLayout;
import leadline.fleet.Overhaul;
import leadline.history.OverhaulInterval.Subject;
import leadline.quantity.RunningHours;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Items of vessels that exchange them. Both engines run ten hours a day. That sister vessels pass
 * on overhauled spares is common practice, no source.
 */
class ItemExchangeTest {

  private static final String GUIDE = "spindle-guide";
  private static final String SISTER = "mallow-tern";

  @Test
  void anItemThatGoesToAnotherVesselTakesItsAgeAlong() {
    // A, new on day 0, comes out on day 300 (3,000 h), goes in on the sister on day 500 and comes
    // out there on day 900: 7,000 h. That life ended on the sister.
    List<Rebuilt> together = together(lark(), sister());
    assertEquals(List.of(), together.get(0).lives("A", GUIDE));
    assertEquals(
        List.of(
            "1 new from 0: rejected at 7000, rejected", "2 renewed from 0: working at 0, on-shelf"),
        together.get(1).lives("A", GUIDE));
    assertEquals(Optional.of(Ship.hours(7000)), together.get(1).state("T2", GUIDE).age());
    assertEquals(List.of(), together.get(0).problems());
    assertEquals(List.of(), together.get(1).problems());
  }

  @Test
  void withoutTheSettingASerialIsAnItemOfItsOwnOnEachVessel() {
    assertEquals(
        List.of("1 new from 0: working at 3000, on-shelf"),
        lark().rebuiltTo(1500).lives("A", GUIDE));
    assertEquals(
        List.of("1 unknown from 0: no age, rejected", "2 renewed from 0: working at 0, on-shelf"),
        sister().rebuiltTo(1500).lives("A", GUIDE));
  }

  @Test
  void anItemOnTwoVesselsAtOnceIsAQuestionToOneOfThem() {
    // A is at 1/1 of the first vessel from the start to day 600, and in on the sister on day 500.
    Ship lark = Ship.newOnDayZero().overhaul("L1", 600, removed("A"), fitted("B"));
    List<Rebuilt> together = together(lark, sister());
    assertEquals(List.of(), together.get(0).problems());
    assertEquals(List.of("in-two-places T1"), together.get(1).problems());
    assertTrue(
        together
            .get(1)
            .sentences()
            .get(0)
            .startsWith(
                "A is on record at hesper-lark/ME fuel-injector 1/1 (there from the start"));
  }

  static LongStream drawings() {
    return LongStream.range(0, 30);
  }

  @ParameterizedTest
  @MethodSource("drawings")
  void vesselsWithoutASerialInCommonHaveTheSameHistoriesTogetherAsApart(long drawing) {
    VesselRecords one = RandomShip.drawn(drawing).records();
    VesselRecords other =
        withOtherSerials(RandomShip.drawn(drawing + 1000, new Ship(SISTER)).records());
    List<Rebuilt> together = together(List.of(other, one));
    assertEquals(words(together(List.of(one)).get(0)), words(together.get(0)));
    assertEquals(words(together(List.of(other)).get(0)), words(together.get(1)));
  }

  private static Ship lark() {
    return Ship.newOnDayZero().overhaul("L1", 300, removed("A"), fitted("B"));
  }

  private static Ship sister() {
    return new Ship(SISTER)
        .engine(row -> row.with(MachineLayout.IN_SERVICE_ON, Ship.day(0)))
        .counter(0, 0)
        .counter(2000, 20_000)
        .overhaul("T1", 500, removed("Y"), fitted("A"))
        .overhaul("T2", 900, removed("A"), fitted("Z"))
        .finding("T2", GUIDE, opened(FoundWord.WORN, Action.RENEWED));
  }

  private static List<Rebuilt> together(Ship... ships) {
    return together(Stream.of(ships).map(Ship::records).toList());
  }

  private static List<Rebuilt> together(List<VesselRecords> vessels) {
    return History.rebuild(
            vessels, TestCatalogue.CATALOGUE, RunningHours.ofHours(24), Ship.endOf(1500))
        .stream()
        .map(Rebuilt::new)
        .toList();
  }

  private static VesselRecords withOtherSerials(VesselRecords records) {
    return new VesselRecords(
        records.vessel(),
        records.machines(),
        records.readings(),
        records.overhauls().stream().map(ItemExchangeTest::withOtherSerials).toList(),
        records.findings());
  }

  private static Overhaul withOtherSerials(Overhaul overhaul) {
    Overhaul removed =
        overhaul.removedSerial().map(it -> overhaul.withRemovedSerial("T" + it)).orElse(overhaul);
    return removed.fittedSerial().map(it -> removed.withFittedSerial("T" + it)).orElse(removed);
  }

  /** All that is told of a vessel. */
  private static List<Object> words(Rebuilt rebuilt) {
    return List.of(
        rebuilt.sentences(),
        rebuilt.visits(),
        rebuilt.intervals(Subject.ITEM),
        rebuilt.intervals(Subject.POSITION),
        rebuilt.items(),
        rebuilt.items().stream().map(item -> rebuilt.lives(item, GUIDE)).toList(),
        rebuilt.items().stream().map(item -> rebuilt.lives(item, "nrv-spring")).toList());
  }
}
