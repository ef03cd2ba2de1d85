package leadline.summary;

import static leadline.summary.EvidenceColumns.EXPOSURE;
import static leadline.summary.EvidenceColumns.VERDICT;
import static leadline.summary.FindingsByHours.FOUND;
import static leadline.summary.FindingsByHours.FOUND_SHARE;
import static leadline.summary.FindingsByHours.OPENED;
import static leadline.summary.FindingsByHours.OVERHAULED;
import static leadline.summary.FindingsByHours.SPEC;
import static leadline.summary.FindingsByHours.TIMES_FOUND;
import static leadline.summary.SharedColumns.HOURS_BAND;
import static leadline.summary.TestCatalogue.INJECTOR;
import static leadline.summary.TestCatalogue.NOZZLE;
import static leadline.summary.TestCatalogue.STARTING_SPRING;
import static leadline.summary.TestCatalogue.STARTING_VALVE;
import static leadline.summary.TestMachine.foundAt;
import static leadline.summary.TestMachine.notOpenedAt;
import static leadline.summary.TestMachine.openedAt;
import static leadline.summary.TestMachine.unstated;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import leadline.fleet.FoundWord;
import leadline.fleet.Part;
import leadline.fleet.Reason;
import leadline.history.Condition;
import leadline.history.PartState;
import org.junit.jupiter.api.Test;

class FindingsByHoursTest {

  private static final String DAY = "2024-03-01";

  private static TestMachine auklet() {
    return TestMachine.engine("auklet", "TWS-A", 5)
        .observed("2022-04-06", "2024-12-31")
        .running(20, 5);
  }

  private static TestMachine planned(PartState... states) {
    TestMachine machine = auklet();
    for (PartState state : states) {
      machine.visit(INJECTOR, DAY, Reason.PLANNED, state);
    }
    return machine;
  }

  private static Rows fleet(Part part, TestMachine machine) {
    return Rows.of(SPEC, machine.alone()).where(SharedColumns.PART, part.name()).fleet();
  }

  @Test
  void everyWordFoundAtAllHasARowInEveryBandThatWasOverhauled() {
    Rows rows =
        fleet(
            NOZZLE,
            planned(
                foundAt(3_999, NOZZLE, Condition.WORKING, FoundWord.SOUND),
                foundAt(4_000, NOZZLE, Condition.BEYOND_LIMIT, FoundWord.WORN),
                notOpenedAt(13_000, NOZZLE)));
    assertEquals(
        List.of("all", "all", "all", "0-4000", "0-4000", "0-4000"),
        rows.each(HOURS_BAND).subList(0, 6));
    assertEquals(
        List.of("4000-8000", "4000-8000", "4000-8000", "12000-16000", "12000-16000", "12000-16000"),
        rows.each(HOURS_BAND).subList(6, 12));
    for (int row = 0; row < 12; row += 3) {
      assertEquals(List.of("failed", "sound", "worn"), rows.each(FOUND).subList(row, row + 3));
    }
    assertEquals(List.of(0L, 1L, 1L, 0L, 1L, 0L, 0L, 0L, 1L, 0L, 0L, 0L), rows.each(TIMES_FOUND));
    assertEquals(List.of(2L, 1L, 1L, 0L), everyThird(rows.each(OPENED)));
    assertEquals(List.of(3L, 1L, 1L, 1L), everyThird(rows.each(OVERHAULED)));
    // Opened 2 of 3, 1 of 1, 1 of 1 and 0 of 1 planned.
    assertEquals(
        List.of("selective-opening", "too-few", "too-few", "insufficient"),
        everyThird(rows.each(VERDICT)));
  }

  private static <T> List<T> everyThird(List<T> values) {
    return java.util.stream.IntStream.range(0, values.size() / 3)
        .mapToObj(row -> values.get(3 * row))
        .toList();
  }

  @Test
  void aPartInSeveralConditionsCountsInEachAndOnceAsFailed() {
    Rows rows =
        fleet(
                NOZZLE,
                planned(
                    foundAt(
                        9_000,
                        NOZZLE,
                        Condition.FAILED,
                        FoundWord.WORN,
                        FoundWord.LEAKING,
                        FoundWord.CRACKED),
                    foundAt(9_100, NOZZLE, Condition.FAILED, FoundWord.LEAKING)))
            .where(HOURS_BAND, "8000-12000");
    assertEquals(List.of("failed", "worn", "cracked", "leaking"), rows.each(FOUND));
    assertEquals(List.of(2L, 1L, 1L, 2L), rows.each(TIMES_FOUND));
    assertEquals(List.of(2L, 2L, 2L, 2L), rows.each(OPENED));
  }

  @Test
  void limitsAreClopperAndPearsonsOfThoseOpened() {
    TableRow row =
        fleet(
                NOZZLE,
                auklet()
                    .visit(INJECTOR, DAY, Reason.PLANNED, worn())
                    .visits(28, INJECTOR, DAY, Reason.PLANNED, sound()))
            .where(HOURS_BAND, "4000-8000")
            .where(FOUND, "worn")
            .only();
    // Newcombe 1998, Statistics in Medicine 17:857, table I, exact method: 1 of 29 gives .0009 to
    // .1776 (from memory).
    assertEquals(1 / 29.0, row.need(FOUND_SHARE.estimate()));
    assertEquals(0.0009, row.need(FOUND_SHARE.lower()), 5e-5);
    assertEquals(0.1776, row.need(FOUND_SHARE.upper()), 5e-5);
    assertEquals("too-few", row.need(VERDICT));
    assertEquals(Optional.empty(), row.find(EXPOSURE));
  }

  @Test
  void theVerdictIsThatOfTheWordAndNotOfThePart() {
    Rows rows =
        fleet(
                NOZZLE,
                auklet()
                    .visits(5, INJECTOR, DAY, Reason.PLANNED, worn())
                    .visits(4, INJECTOR, DAY, Reason.PLANNED, sound()))
            .where(HOURS_BAND, "all");
    assertEquals(List.of("failed", "sound", "worn"), rows.each(FOUND));
    assertEquals(List.of("too-few", "too-few", "ok"), rows.each(VERDICT));
  }

  @Test
  void whatNobodySaysWasOpenedWasFoundInNoCondition() {
    Rows rows = fleet(NOZZLE, planned(unstated(NOZZLE), notOpenedAt(9_000, NOZZLE)));
    assertEquals(List.of("all", "8000-12000", "unknown"), rows.each(HOURS_BAND));
    assertEquals(List.of("failed", "failed", "failed"), rows.each(FOUND));
    assertEquals(List.of(0L, 0L, 0L), rows.each(OPENED));
    assertEquals(List.of("insufficient", "insufficient", "insufficient"), rows.each(VERDICT));
  }

  @Test
  void bandsOfHoursAreTheWrongClockForAPartThatAgesByStarts() {
    Rows rows =
        fleet(
                STARTING_SPRING,
                auklet()
                    .visits(
                        5,
                        STARTING_VALVE,
                        DAY,
                        Reason.PLANNED,
                        openedAt(100, STARTING_SPRING, Condition.FAILED)))
            .where(FOUND, "failed");
    assertEquals(List.of("all", "0-4000"), rows.each(HOURS_BAND));
    assertEquals(List.of("ok", "wrong-clock"), rows.each(VERDICT));
  }

  @Test
  void thereAreRowsOfTheFleetAndItsModelsAndOfNoVessel() {
    Rows rows = Rows.of(SPEC, planned(worn()).alone());
    assertEquals(Set.of("fleet", "model"), Set.copyOf(rows.each(SharedColumns.LEVEL)));
    assertEquals(Set.of("since-start"), Set.copyOf(rows.each(SharedColumns.WINDOW)));
  }

  @Test
  void withoutAnOverhaulThereIsOneRowWithoutFigures() {
    TableRow row = fleet(NOZZLE, auklet()).only();
    assertEquals("all", row.need(HOURS_BAND));
    assertEquals("failed", row.need(FOUND));
    assertEquals("insufficient", row.need(VERDICT));
    assertEquals(Optional.empty(), row.find(FOUND_SHARE.estimate()));
  }

  private static PartState worn() {
    return foundAt(5_000, NOZZLE, Condition.BEYOND_LIMIT, FoundWord.WORN);
  }

  private static PartState sound() {
    return foundAt(5_000, NOZZLE, Condition.WORKING, FoundWord.SOUND);
  }
}
