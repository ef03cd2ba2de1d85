package leadline.history;

import static leadline.history.Ship.at;
import static leadline.history.Ship.fitted;
import static leadline.history.Ship.newOnDayZero;
import static leadline.history.Ship.removed;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Serials that contradict each other, by hand. The engine runs ten hours a day; the spindle guide
 * always shows its failure, so that its life tells the item's age. Up to day 1500.
 */
class SerialQuestionsTest {

  private static final String GUIDE = "spindle-guide";

  @Test
  void whereEitherOfTwoSerialsMayBeMistypedBothArePut() {
    // LB103 in on day 300, LB108 out on day 900 at the same position; neither is named elsewhere.
    Rebuilt rebuilt =
        newOnDayZero()
            .overhaul("O1", 300, removed("A"), fitted("LB103"))
            .overhaul("O2", 900, removed("LB108"), fitted("B"))
            .rebuiltTo(1500);
    assertEquals(List.of("removed-not-fitted O2"), rebuilt.problems());
    assertTrue(
        rebuilt
            .sentences()
            .get(0)
            .endsWith(
                "One character may be mistyped: was it LB103 that overhaul O2 removed, not LB108; or"
                    + " was it LB108 that overhaul O1 fitted, not LB103? Send the right serial, or"
                    + " the missing exchange."));
  }

  @Test
  void aSerialIsProposedAndNothingIsMadeOfIt() {
    // LB108 is at 2/1 from the start to the end, so that only LB103 can have come out of 1/1: had
    // O1 fitted LB108, it would be in two places. LB103's 6,000 h there are not counted: it is
    // first seen when fitted, and lost.
    Rebuilt rebuilt =
        newOnDayZero()
            .overhaul("O0", 100, at(2, 1), removed("LB108"), fitted("LB108"))
            .overhaul("O1", 300, removed("A"), fitted("LB103"))
            .overhaul("O2", 900, removed("LB108"), fitted("B"))
            .rebuiltTo(1500);
    assertEquals(List.of("removed-not-fitted O2"), rebuilt.problems());
    String sentence = rebuilt.sentences().get(0);
    assertTrue(
        sentence.contains("mistyped: was it LB103 that overhaul O2 removed, not LB108? Send"),
        sentence);
    assertTrue(
        sentence.contains(
            "LB108 is on record at hesper-lark/ME fuel-injector 2/1 (fitted by overhaul O0, not on"
                + " record as removed)."),
        sentence);
    assertEquals(List.of("1 unknown from 0: no age, lost-sight"), rebuilt.lives("LB103", GUIDE));
    assertEquals(List.of("1 new from 0: working at 3000, on-shelf"), rebuilt.lives("A", GUIDE));
  }

  @Test
  void ofTwoCorrectionsTheOneThatLeavesNoContradictionIsProposed() {
    // LB103 is at 2/1 all along, and O1 fits "LB103" at 1/1 too, where LB108 comes out on day 900:
    // with LB108 fitted by O1 both contradictions are gone, with LB103 removed by O2 only one is.
    Rebuilt rebuilt =
        newOnDayZero()
            .overhaul("O0", 100, at(2, 1), removed("LB103"), fitted("LB103"))
            .overhaul("O1", 300, removed("A"), fitted("LB103"))
            .overhaul("O2", 900, removed("LB108"), fitted("B"))
            .overhaul("O3", 1200, at(2, 1), removed("LB103"), fitted("LB103"))
            .rebuiltTo(1500);
    String sentence =
        rebuilt.checked().problems().stream()
            .filter(problem -> problem.kind().equals("removed-not-fitted"))
            .findFirst()
            .orElseThrow()
            .sentence();
    assertTrue(
        sentence.contains("mistyped: was it LB108 that overhaul O1 fitted, not LB103? Send"),
        sentence);
  }

  @Test
  void serialsThatDifferInMoreAreNotProposed() {
    Rebuilt rebuilt =
        newOnDayZero()
            .overhaul("O1", 300, removed("A"), fitted("LB103"))
            .overhaul("O2", 900, removed("LB211"), fitted("B"))
            .rebuiltTo(1500);
    assertTrue(
        rebuilt
            .sentences()
            .get(0)
            .endsWith(
                "is on record as fitted by overhaul O1. No other record names LB211. Neither's hours"
                    + " there are counted. Send the missing exchange, or the right serial."),
        rebuilt.sentences().get(0));
  }

  @Test
  void anItemFittedAgainWithoutARemovalIsToldFromOneInTwoPlaces() {
    // A goes from 1/2 to 1/1 on day 500, and to 2/1 on day 700: nothing says that it left 1/1. Of
    // its 3,000 h at 1/2 nothing is lost; after day 500 its hours are counted nowhere.
    Rebuilt rebuilt =
        newOnDayZero()
            .overhaul("O1", 300, at(1, 2), removed("A"), fitted("B"))
            .overhaul("O2", 500, removed("C"), fitted("A"))
            .overhaul("O3", 700, at(2, 1), removed("D"), fitted("A"))
            .rebuiltTo(1500);
    assertEquals(List.of("fitted-twice O3"), rebuilt.problems());
    assertTrue(
        rebuilt
            .sentences()
            .get(0)
            .startsWith(
                "A was fitted again without having come out: it is on record at hesper-lark/ME"
                    + " fuel-injector 1/1 (fitted by overhaul O2, not on record as removed) and at"
                    + " hesper-lark/ME fuel-injector 2/1 (fitted by overhaul O3,"));
    assertEquals("1 new from 0: working at 3000, lost-sight", rebuilt.lives("A", GUIDE).get(0));
  }

  @ParameterizedTest
  @CsvSource({
    "LB103, LB108, true",
    "LB103, LB130, true",
    "LB103, LB13, true",
    "LB103, LB1033, true",
    "LB103, LBI03, true",
    "LB103, LB103, false",
    "LB103, LB301, false",
    "LB103, LB211, false",
    "LB103, LB1, false",
    "A, B, false",
    "A3, B3, true"
  })
  void oneSlipIsOneCharacterOrTwoNeighbours(String one, String other, boolean isOneSlip) {
    assertEquals(isOneSlip, MistypedSerial.isOneSlip(one, other));
    assertEquals(isOneSlip, MistypedSerial.isOneSlip(other, one));
  }
}
