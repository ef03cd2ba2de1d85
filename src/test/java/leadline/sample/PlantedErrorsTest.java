package leadline.sample;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import leadline.fleet.Action;
import leadline.fleet.Cells;
import leadline.fleet.FindingLayout;
import leadline.fleet.FoundWord;
import leadline.fleet.HoursLayout;
import leadline.fleet.OverhaulLayout;
import leadline.fleet.ReadingKind;
import leadline.fleet.RecordKind;
import leadline.quantity.Days;
import leadline.quantity.RunningHours;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Every error is planted where its list says, as often as it should be, and can be found there. */
@Tag("long")
class PlantedErrorsTest {

  private static final ErrorRates ALL =
      ErrorRates.usual().with(RecordError.SEPARATOR_FAULT, 2 / 24.0);
  private static final FleetPlan PLAN = SampleCatalogue.usual(3).withErrors(ALL);
  private static final List<SampleVessel> VESSELS = vessels(PLAN);

  private static List<SampleVessel> vessels(FleetPlan plan) {
    SampleFleet fleet = new SampleFleet(plan, 77);
    return IntStream.rangeClosed(1, 60).mapToObj(fleet::vessel).toList();
  }

  @ParameterizedTest
  @EnumSource(RecordError.class)
  void aShareOfNoneIsNone(RecordError kind) {
    FleetPlan plan = PLAN.withErrors(ALL.with(kind, 0));
    assertEquals(0, planted(vessels(plan), kind));
    assertTrue(planted(VESSELS, kind) > 0);
  }

  @Test
  void theSharesAreTheUsualOnes() {
    long overhauls = count(VESSELS, RecordKind.OVERHAULS);
    long findings = count(VESSELS, RecordKind.FINDINGS);
    assertShare(RecordError.NO_HOURS, .03, overhauls);
    assertShare(RecordError.HOURS_OFF, .015, overhauls);
    assertShare(RecordError.DIGITS_TRANSPOSED, .005, overhauls);
    assertShare(RecordError.DUPLICATE, .01, overhauls);
    assertShare(RecordError.DATE_ORDER, .005, overhauls);
    assertShare(RecordError.BLANK_FINDING, .08, findings);
    assertShare(RecordError.UNMAPPED_WORDING, .04, findings);
    assertShare(RecordError.MISSING_MONTH, .03, 60L * 5 * 34);
    assertShare(RecordError.STALE_MONTH, .01, 60L * 5 * 34);
    assertShare(RecordError.COUNTER_REPLACED, 5 / 24.0, 60);
    assertShare(RecordError.ROLL_OVER, 1 / 24.0, 60);
    assertShare(RecordError.SEPARATOR_FAULT, 2 / 24.0, 60);
  }

  /** A few of the hundred are also another error, or stand on a row written twice. */
  private static void assertShare(RecordError kind, double share, long of) {
    double error = Math.sqrt(share * (1 - share) / of);
    assertEquals(share, planted(VESSELS, kind) / (double) of, .15 * share + 4 * error, kind.word());
  }

  @Test
  void theRowsShowWhatTheListSays() {
    for (SampleVessel vessel : VESSELS) {
      assertRows(vessel, RecordError.NO_HOURS, row -> hours(row).isEmpty());
      assertRows(
          vessel,
          RecordError.SERIAL_LACKING,
          row ->
              row.cells().find(OverhaulLayout.REMOVED_SERIAL).isEmpty()
                  || row.cells().find(OverhaulLayout.FITTED_SERIAL).isEmpty());
      assertFindings(
          vessel,
          RecordError.RENEWAL_UNREPORTED,
          row -> row.cells().need(FindingLayout.ACTION) != Action.RENEWED);
      assertFindings(
          vessel,
          RecordError.UNOPENED_AS_SOUND,
          row -> row.cells().need(FindingLayout.FOUND) == FoundWord.SOUND);
      assertFindings(
          vessel,
          RecordError.BLANK_FINDING,
          row ->
              row.cells().find(FindingLayout.OPENED).isEmpty()
                  && row.cells().find(FindingLayout.FOUND).isEmpty());
      assertFindings(vessel, RecordError.UNMAPPED_WORDING, row -> !row.isUnderstood());
    }
  }

  private static void assertRows(
      SampleVessel vessel, RecordError kind, Predicate<SampleRow> shows) {
    Map<String, SampleRow> rows =
        vessel.rows(RecordKind.OVERHAULS).stream()
            .collect(
                Collectors.toMap(
                    row -> row.cells().need(OverhaulLayout.OVERHAUL),
                    row -> row,
                    (row, copy) -> row));
    vessel.errors().stream()
        .filter(error -> error.kind() == kind)
        .forEach(
            error ->
                assertTrue(
                    Optional.ofNullable(rows.get(error.record())).filter(shows).isPresent(),
                    error::toString));
  }

  private static void assertFindings(
      SampleVessel vessel, RecordError kind, Predicate<SampleRow> shows) {
    Map<List<String>, SampleRow> rows =
        vessel.rows(RecordKind.FINDINGS).stream()
            .collect(
                Collectors.toMap(
                    row ->
                        List.of(
                            row.cells().need(FindingLayout.OVERHAUL),
                            row.cells().need(FindingLayout.PART)),
                    row -> row,
                    (row, copy) -> row));
    vessel.errors().stream()
        .filter(error -> error.kind() == kind)
        .forEach(
            error ->
                assertTrue(
                    Optional.ofNullable(rows.get(List.of(error.record(), error.part())))
                        .filter(shows)
                        .isPresent(),
                    error::toString));
  }

  /** The record names machine and day as written; the truth is the figure, or the day. */
  @Test
  void aSlippedReadingSaysOtherThanTheTruth() {
    for (SampleVessel vessel : VESSELS) {
      Map<String, List<String>> figures =
          vessel.rows(RecordKind.HOURS).stream()
              .map(SampleRow::cells)
              .collect(
                  Collectors.groupingBy(
                      row ->
                          row.need(HoursLayout.MACHINE)
                              + " "
                              + Days.asWritten(row.need(HoursLayout.READ_AT)),
                      Collectors.mapping(
                          row -> row.need(HoursLayout.HOURS).toString(), Collectors.toList())));
      vessel.errors().stream()
          .filter(error -> RecordError.SLIPS_OF_READINGS.contains(error.kind()))
          .forEach(
              error ->
                  assertTrue(
                      figures.getOrDefault(error.record(), List.of()).stream()
                          .anyMatch(written -> !written.equals(error.truth())),
                      error::toString));
    }
  }

  @Test
  void aSlipInTheDigitsIsOfTheKindItSays() {
    Draw draw = Draw.of(5);
    RunningHours figure = RunningHours.ofTenths(412_063);
    for (int i = 0; i < 100; i++) {
      String swapped = Long.toString(Digits.transposed(figure, draw).tenths());
      assertEquals(sorted("412063"), sorted(swapped));
      assertNotEquals("412063", swapped);
      assertEquals(5, Long.toString(Digits.lost(figure, draw).tenths()).length());
      assertEquals(7, Long.toString(Digits.added(figure, draw).tenths()).length());
    }
    assertFalse(Digits.differ(RunningHours.ofTenths(222)));
  }

  private static String sorted(String digits) {
    return digits.chars().sorted().mapToObj(Character::toString).collect(Collectors.joining());
  }

  @Test
  void aMistypedSerialDiffersInOneLetter() {
    ErrorRates ofSerials = ErrorRates.NONE.with(RecordError.SERIAL_MISTYPED, .2);
    for (SampleVessel vessel : vessels(PLAN.withErrors(ofSerials))) {
      Map<String, SampleRow> rows =
          vessel.rows(RecordKind.OVERHAULS).stream()
              .collect(
                  Collectors.toMap(row -> row.cells().need(OverhaulLayout.OVERHAUL), row -> row));
      for (PlantedError error : vessel.errors()) {
        Cells row = Optional.ofNullable(rows.get(error.record())).orElseThrow().cells();
        assertTrue(
            lettersApart(row.need(OverhaulLayout.REMOVED_SERIAL), error.truth()) == 1
                || lettersApart(row.need(OverhaulLayout.FITTED_SERIAL), error.truth()) == 1,
            error::toString);
      }
    }
  }

  private static long lettersApart(String one, String other) {
    return one.length() == other.length()
        ? IntStream.range(0, one.length())
            .filter(place -> one.charAt(place) != other.charAt(place))
            .count()
        : Long.MAX_VALUE;
  }

  @Test
  void anExchangeThatNobodyWroteDownIsNotThere() {
    for (SampleVessel vessel : VESSELS) {
      Set<String> written =
          vessel.rows(RecordKind.OVERHAULS).stream()
              .map(row -> row.cells().need(OverhaulLayout.OVERHAUL))
              .collect(Collectors.toSet());
      vessel.errors().stream()
          .filter(error -> error.kind() == RecordError.SWAP_UNREPORTED)
          .forEach(error -> assertFalse(written.contains(error.record()), error::toString));
    }
  }

  @Test
  void aDuplicateStandsTwice() {
    for (SampleVessel vessel : VESSELS) {
      long rows = vessel.rows(RecordKind.OVERHAULS).size();
      long different = vessel.rows(RecordKind.OVERHAULS).stream().distinct().count();
      assertEquals(planted(List.of(vessel), RecordError.DUPLICATE), rows - different);
    }
  }

  @Test
  void aNewCounterBeginsAtZeroAndAFullOneToo() {
    ErrorRates ofCounters =
        ErrorRates.NONE.with(RecordError.COUNTER_REPLACED, .3).with(RecordError.ROLL_OVER, .3);
    for (SampleVessel vessel : vessels(PLAN.withErrors(ofCounters))) {
      long replaced =
          vessel.rows(RecordKind.HOURS).stream()
              .filter(row -> row.cells().need(HoursLayout.KIND) == ReadingKind.REPLACED)
              .count();
      assertEquals(planted(List.of(vessel), RecordError.COUNTER_REPLACED), replaced);
      if (planted(List.of(vessel), RecordError.ROLL_OVER) > 0) {
        assertTrue(
            vessel.rows(RecordKind.HOURS).stream()
                .allMatch(row -> row.cells().need(HoursLayout.HOURS).hours() < 100_000));
      }
    }
  }

  private static Optional<?> hours(SampleRow row) {
    return row.cells().find(OverhaulLayout.MACHINE_HOURS);
  }

  private static long planted(List<SampleVessel> vessels, RecordError kind) {
    return vessels.stream()
        .flatMap(vessel -> vessel.errors().stream())
        .filter(error -> error.kind() == kind)
        .count();
  }

  private static long count(List<SampleVessel> vessels, RecordKind kind) {
    return vessels.stream().mapToLong(vessel -> vessel.rows(kind).size()).sum();
  }
}
