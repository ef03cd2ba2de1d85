package leadline.history;

import static leadline.history.Ship.at;
import static leadline.history.Ship.because;
import static leadline.history.Ship.endOf;
import static leadline.history.Ship.fitted;
import static leadline.history.Ship.hours;
import static leadline.history.Ship.newOnDayZero;
import static leadline.history.Ship.opened;
import static leadline.history.Ship.removed;
import static leadline.history.Ship.tested;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import leadline.fleet.Action;
import leadline.fleet.Cells;
import leadline.fleet.FoundWord;
import leadline.fleet.OverhaulLayout;
import leadline.fleet.ReadingKind;
import leadline.fleet.Reason;
import leadline.fleet.RecordKind;
import leadline.fleet.TestResult;
import leadline.history.OverhaulInterval.Subject;
import org.junit.jupiter.api.Test;

/**
 * Items overhauled at no position, and items never seen again, by hand. The engine runs ten hours a
 * day. That injectors are landed in batches, overhauled ashore and come back for other cylinders is
 * common practice, no source.
 */
class WorkshopTest {

  private static final String GUIDE = "spindle-guide";

  @Test
  void aBatchSentAshoreIsOneOverhaulOfEachItemAndAgesMoveWithTheItems() {
    // A (from 1/1) and B (from 1/2) come out on day 300, 3,000 h old. The workshop renews A's guide
    // on day 350 and finds B's sound. A goes in at 1/2 and B at 1/1 on day 500, and both come out
    // on
    // day 900: 4,000 h more. A's first guide: rejected at 3,000 h; its second 4,000 h old. B's
    // guide
    // is 7,000 h old. Each item was overhauled twice, 3,000 and 4,000 h apart.
    Rebuilt rebuilt =
        newOnDayZero()
            .overhaul("O1", 300, removed("A"), fitted("C"))
            .overhaul("O2", 300, at(1, 2), removed("B"), fitted("D"))
            .add(ashore("W1", 350), removed("A"))
            .finding("W1", GUIDE, opened(FoundWord.WORN, Action.RENEWED))
            .add(ashore("W2", 350), removed("B"))
            .finding("W2", GUIDE, opened(FoundWord.SOUND, Action.NONE))
            .overhaul("O3", 500, removed("C"), fitted("B"))
            .overhaul("O4", 500, at(1, 2), removed("D"), fitted("A"))
            .overhaul("O5", 900, removed("B"), fitted("C"))
            .overhaul("O6", 900, at(1, 2), removed("A"), fitted("D"))
            .rebuilt();
    assertEquals(List.of(), rebuilt.problems());
    assertEquals(
        List.of(
            "1 new from 0: rejected at 3000, rejected",
            "2 renewed from 0: working at 4000, on-shelf"),
        rebuilt.lives("A", GUIDE));
    assertEquals(List.of("1 new from 0: working at 7000, on-shelf"), rebuilt.lives("B", GUIDE));
    assertEquals(List.of("O1", "O2", "O3", "O4", "O5", "O6"), rebuilt.visits());
    assertTrue(rebuilt.state("O1", GUIDE).isRejected());
    assertEquals(Optional.of(hours(3000)), rebuilt.state("O1", GUIDE).age());
    // A and B: 3000 and 4000 each. C and D (day 300 to 500, ages not known before): of unknown
    // start; back in on day 900 and running since, 11,000 h. The other two positions: never.
    assertEquals(
        List.of(
            "11000 ...",
            "11000 ...",
            "20000 ...",
            "20000 ...",
            "3000 planned",
            "3000 planned",
            "4000 planned",
            "4000 planned",
            "? planned",
            "? planned"),
        rebuilt.intervals(Subject.ITEM));
  }

  @Test
  void afterATestTheWorkshopsIsTheOverhaul() {
    // A is tested and exchanged on day 300: no overhaul. The workshop's on day 350 is, at 3,000 h.
    Rebuilt rebuilt =
        newOnDayZero()
            .overhaul("O1", 300, tested(TestResult.FAILED), removed("A"), fitted("B"))
            .add(ashore("W1", 350), removed("A"), because(Reason.CONDITION))
            .finding("W1", GUIDE, opened(FoundWord.STUCK, Action.RENEWED))
            .rebuiltTo(1500);
    assertEquals(List.of(), rebuilt.problems());
    assertEquals(List.of("O1", "W1"), rebuilt.visits());
    assertEquals(hours(3000), rebuilt.visit("W1").machineHours());
    assertEquals(Optional.empty(), rebuilt.visit("W1").position());
    assertEquals("A", rebuilt.visit("W1").removed().orElseThrow().label());
    assertEquals(
        List.of("1 new from 0: failed at 3000, failed", "2 renewed from 0: working at 0, on-shelf"),
        rebuilt.lives("A", GUIDE));
    assertTrue(rebuilt.intervals(Subject.ITEM).contains("3000 condition"));
  }

  @Test
  void aSpareOverhauledAshoreBeforeItIsFirstFittedHasTheAgesOfWhatWasRenewed() {
    // Z comes with a new guide, goes in on day 500 and is still there at 20,000 h: 15,000 h.
    Rebuilt rebuilt =
        newOnDayZero()
            .add(ashore("W1", 350), fitted("Z"))
            .finding("W1", GUIDE, opened(FoundWord.WORN, Action.RENEWED))
            .overhaul("O1", 500, removed("A"), fitted("Z"))
            .rebuilt();
    assertEquals(
        List.of(
            "1 unknown from 0: no age, rejected",
            "2 renewed from 0: working at 15000, still-fitted"),
        rebuilt.lives("Z", GUIDE));
    assertEquals(List.of(), rebuilt.problems());
  }

  @Test
  void anItemOverhauledInAWorkshopWhileItWasFittedIsAQuestion() {
    // A is at 1/1 from the start to day 900; of the workshop's visit on day 350 nothing follows.
    Rebuilt rebuilt =
        newOnDayZero()
            .add(ashore("W1", 350), removed("A"))
            .finding("W1", GUIDE, opened(FoundWord.WORN, Action.RENEWED))
            .overhaul("O1", 900, removed("A"), fitted("B"))
            .rebuilt();
    assertEquals(List.of("overhauled-while-fitted W1"), rebuilt.problems());
    assertTrue(
        rebuilt.sentences().get(0).contains("(there from the start, removed by overhaul O1"));
    assertEquals(List.of("1 new from 0: working at 9000, on-shelf"), rebuilt.lives("A", GUIDE));
    assertEquals(Optional.empty(), rebuilt.state("W1", GUIDE).age());
    assertEquals(Optional.empty(), rebuilt.visit("W1").removed());
  }

  @Test
  void aPositionThatTheRecordNamesWronglyIsNoWorkshop() {
    Rebuilt rebuilt = newOnDayZero().overhaul("O1", 300, at(3, 1), removed("A")).rebuilt();
    assertEquals(List.of("position-unknown O1"), rebuilt.problems());
  }

  @Test
  void anItemUnseenForTwoIntervalsIsAskedForOnce() {
    // A out on day 399 at 3,990 h: by day 2000 the engine has run 16,010 h, two intervals of 8,000
    // and 10. B, out on day 400, is 10 h short of that. A's life ended where it came out.
    Ship ship =
        newOnDayZero()
            .overhaul("O1", 399, removed("A"), fitted("C"))
            .overhaul("O2", 400, at(1, 2), removed("B"), fitted("D"));
    assertEquals(List.of("item-not-seen-since O1"), ship.rebuilt().problems());
    assertTrue(
        ship.rebuilt()
            .sentences()
            .get(0)
            .startsWith(
                "A was last seen on 2021-02-03, in this overhaul, and is not on record as fitted"
                    + " again. The machine ME has run 16010 h since"));
    assertEquals(
        List.of("1 new from 0: working at 3990, on-shelf"), ship.rebuilt().lives("A", GUIDE));
    assertEquals(List.of(), ship.rebuiltTo(1999).problems());
  }

  @Test
  void anItemOverhauledAshoreWasSeenThere() {
    Ship ship =
        newOnDayZero()
            .overhaul("O1", 100, removed("A"), fitted("C"))
            .add(ashore("W1", 900), removed("A"));
    assertEquals(List.of(), ship.rebuilt().problems());
  }

  @Test
  void anItemFittedOnAnotherMachineIsNotUnseen() {
    Ship ship =
        newOnDayZero()
            .machine("ME2")
            .reading("ME2", ReadingKind.COUNTER, endOf(0), 0)
            .reading("ME2", ReadingKind.COUNTER, endOf(2000), 100)
            .overhaul("O1", 100, removed("A"), fitted("C"))
            .overhaul(
                "O2",
                200,
                row -> row.with(OverhaulLayout.MACHINE, "ME2"),
                removed("X"),
                fitted("A"));
    assertEquals(List.of(), ship.rebuilt().problems());
  }

  private static Cells.Builder ashore(String overhaul, int day) {
    return Cells.of(RecordKind.OVERHAULS)
        .with(OverhaulLayout.VESSEL, Ship.VESSEL)
        .with(OverhaulLayout.OVERHAUL, overhaul)
        .with(OverhaulLayout.MACHINE, Ship.ENGINE)
        .with(OverhaulLayout.COMPONENT, "fuel-injector")
        .with(OverhaulLayout.DONE_ON, Ship.day(day))
        .with(OverhaulLayout.REASON, Reason.PLANNED);
  }
}
