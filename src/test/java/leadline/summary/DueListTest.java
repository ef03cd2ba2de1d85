package leadline.summary;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import leadline.fleet.Component;
import leadline.fleet.Item;
import leadline.fleet.LimitBy;
import leadline.fleet.MachineId;
import leadline.fleet.OverhaulId;
import leadline.fleet.OverhaulLimit;
import leadline.fleet.Part;
import leadline.fleet.Position;
import leadline.history.Census;
import leadline.history.CurrentRecords;
import leadline.history.PositionStanding;
import leadline.history.PositionStanding.ShutPart;
import leadline.history.PositionStanding.Since;
import leadline.origin.BatchTimes;
import leadline.quantity.Days;
import leadline.quantity.RunningHours;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** One engine observed to the end of 2024-12, the limit of its injectors 8,000 h; by hand. */
class DueListTest {

  private static final MachineId ENGINE = new MachineId("plover", "me");
  private static final Edition EDITION = new Edition(Rows.MONTH, Rows.KNOWN_AT);

  private static PositionStanding overhauled(
      Component component, int unit, String on, long runHours, ShutPart... shut) {
    return standing(
        component,
        unit,
        new Since.Overhaul(new OverhaulId("plover", "P-1"), end(on)),
        runHours,
        shut);
  }

  private static PositionStanding unknown(int unit, long runHours) {
    return standing(TestCatalogue.INJECTOR, unit, new Since.Unknown(end("2020-12-31")), runHours);
  }

  private static PositionStanding standing(
      Component component, int unit, Since since, long runHours, ShutPart... shut) {
    Position position = new Position(ENGINE, component.name(), unit, 1);
    return new PositionStanding(
        component,
        position,
        Optional.of(new Item.AtPosition(position, 1)),
        since,
        RunningHours.ofHours(runHours),
        List.of(shut),
        List.of());
  }

  private static Component limited(long hours, int months) {
    return new Component(
        TestCatalogue.INJECTOR.name(),
        TestCatalogue.INJECTOR.per(),
        TestCatalogue.INJECTOR.machineKinds(),
        TestCatalogue.INJECTOR.policy(),
        List.of(new OverhaulLimit<>(LimitBy.MAKER, RunningHours.ofHours(hours), "book 4")),
        List.of(new OverhaulLimit<>(LimitBy.CLASS, months, "survey list")),
        TestCatalogue.INJECTOR.parts());
  }

  private static List<TableRow> rows(TestMachine machine) {
    return new DueList()
        .rows(
            new VesselAccount(
                new CurrentRecords(
                    "plover", List.of(), java.util.Set.of(), Census.EMPTY, List.of()),
                machine.alone(),
                List.of(),
                new BatchTimes(Map.of(), Rows.KNOWN_AT)),
            EDITION);
  }

  private static List<TableRow> rows(long hoursADay, PositionStanding... positions) {
    TestMachine machine =
        TestMachine.engine("plover", "TWS-A", 6)
            .observed("2020-12-31", "2024-12-31")
            .running(hoursADay);
    for (PositionStanding position : positions) {
      machine.position(position);
    }
    return rows(machine);
  }

  private static String line(TableRow row, TableColumn<?>... columns) {
    List<String> cells = new ArrayList<>();
    for (TableColumn<?> column : columns) {
      cells.add(row.find(column).map(Object::toString).orElse("-"));
    }
    return String.join(" | ", cells);
  }

  private static Instant end(String day) {
    return Days.endOf(LocalDate.parse(day));
  }

  /** 8,000 - 7,500 = 500 h at 10 h a day are 50 days: 19 February 2025 ends the 50th. */
  @Test
  void whatIsLeftAtTheMachinesOwnPaceGivesTheDay() {
    TableRow row = rows(10, overhauled(TestCatalogue.INJECTOR, 1, "2022-12-11", 7_500)).get(0);

    assertEquals(
        "500.0 | 10.0 | 2025-02-19 | 2025-02-19 | 2025-02-19 | - | due-soon",
        line(
            row,
            DueList.REMAINING,
            DueForecast.RATE,
            DueForecast.DUE_EARLY,
            DueForecast.DUE_ON,
            DueForecast.DUE_LATE,
            DueForecast.NO_DATE,
            DueList.STANDING));
  }

  /** The maker's 6,000 h come before the 8,000 h of common practice: 6,000 - 6,100 = -100. */
  @Test
  void theShortestLimitBindsAndIsNamedWithItsSource() {
    TableRow row = rows(10, overhauled(limited(6_000, 60), 1, "2023-05-01", 6_100)).get(0);

    assertEquals(
        "6000.0 | maker | book 4 | -100.0 | - | overdue | overdue",
        line(
            row,
            DueList.LIMIT,
            DueList.LIMIT_BY,
            DueList.LIMIT_SOURCE,
            DueList.REMAINING,
            DueForecast.DUE_ON,
            DueForecast.NO_DATE,
            DueList.STANDING));
  }

  /** 24 months after 15 March 2023; the 5,000 h left would take 500 days. */
  @Test
  void theCalendarBindsWhereItComesFirst() {
    TableRow row = rows(10, overhauled(limited(7_000, 24), 1, "2023-03-15", 2_000)).get(0);

    assertEquals(
        "24.0 | class: survey list | 2025-03-15 | 2025-03-15 | 2025-03-15 | due-soon",
        line(
            row,
            DueList.LIMIT_MONTHS,
            DueList.MONTHS_SOURCE,
            DueForecast.DUE_EARLY,
            DueForecast.DUE_ON,
            DueForecast.DUE_LATE,
            DueList.STANDING));
  }

  /** 24 months after 15 November 2022 lie before the month's end, whatever the hours. */
  @Test
  void aCalendarLimitThatHasPassedIsOverdue() {
    TableRow row = rows(10, overhauled(limited(7_000, 24), 1, "2022-11-15", 2_000)).get(0);

    assertEquals("5000.0 | overdue", line(row, DueList.REMAINING, DueList.STANDING));
  }

  @Test
  void withoutAnOverhaulOnRecordNothingIsForecastYetTheHoursOnRecordCanExceedTheLimit() {
    List<TableRow> rows = rows(10, unknown(1, 7_999), unknown(2, 8_001));
    TableColumn<?>[] columns = {
      DueList.SINCE,
      DueList.RUN,
      DueList.HOURS,
      DueList.REMAINING,
      DueForecast.DUE_EARLY,
      DueForecast.NO_DATE,
      DueList.STANDING
    };

    assertEquals(
        "unknown | 7999.0 | - | - | - | since-unknown | unknown", line(rows.get(0), columns));
    assertEquals("unknown | 8001.0 | - | - | - | overdue | overdue", line(rows.get(1), columns));
  }

  /** Standing still all the year: no day at that pace; none is told, not a far one. */
  @Test
  void aMachineThatStandsStillHasNoDay() {
    TableRow row = rows(0, overhauled(TestCatalogue.INJECTOR, 1, "2022-12-11", 7_500)).get(0);

    assertEquals(
        "- | - | not-running | not-due",
        line(row, DueForecast.DUE_ON, DueForecast.DUE_LATE, DueForecast.NO_DATE, DueList.STANDING));
  }

  /** Observed for 20 days: 500 h left are run in 20.83 days at the earliest, on 21 January. */
  @Test
  void withoutAWholeMonthOnlyTheEarliestDayIsTold() {
    TableRow row =
        rows(TestMachine.engine("plover", "TWS-A", 6)
                .observed("2024-12-11", "2024-12-31")
                .running(10)
                .position(overhauled(TestCatalogue.INJECTOR, 1, "2024-12-11", 7_500)))
            .get(0);

    assertEquals(
        "- | 2025-01-21 | - | - | no-whole-month | due-soon",
        line(
            row,
            DueForecast.RATE,
            DueForecast.DUE_EARLY,
            DueForecast.DUE_ON,
            DueForecast.DUE_LATE,
            DueForecast.NO_DATE,
            DueList.STANDING));
  }

  /** Left: -1, 400 (of 0 within 500), 501 and 1,000 (of 501), unknown. */
  @Test
  void whatFallsDueWithinTheWindowIsOneGroup() {
    List<TableRow> rows =
        rows(
            10,
            overhauled(TestCatalogue.INJECTOR, 1, "2022-12-11", 7_000),
            overhauled(TestCatalogue.INJECTOR, 2, "2022-12-11", 8_001),
            unknown(3, 100),
            overhauled(TestCatalogue.INJECTOR, 4, "2022-12-11", 7_600),
            overhauled(TestCatalogue.INJECTOR, 5, "2022-12-11", 7_499));

    assertEquals(
        List.of("me-2 | 2", "me-1 | 2", "- | 0", "me-1 | 2", "me-2 | 2"),
        rows.stream().map(row -> line(row, DueList.GROUP, DueList.GROUP_SIZE)).toList());
  }

  @Test
  void ofThePartsLeftShutTheOneNeverOpenedComesBeforeTheOneShutLongest() {
    Part nozzle = TestCatalogue.NOZZLE;
    Part spring = TestCatalogue.NRV_SPRING;
    ShutPart longAgo =
        new ShutPart(nozzle, Optional.of(end("2021-05-31")), RunningHours.ofHours(9_000));
    ShutPart lately =
        new ShutPart(spring, Optional.of(end("2023-05-31")), RunningHours.ofHours(4_000));
    ShutPart never = new ShutPart(spring, Optional.empty(), RunningHours.ofHours(5_000));
    List<TableRow> rows =
        rows(
            10,
            overhauled(TestCatalogue.INJECTOR, 1, "2022-12-11", 100, longAgo, lately),
            overhauled(TestCatalogue.INJECTOR, 2, "2022-12-11", 100, longAgo, never));
    TableColumn<?>[] columns = {DueList.SHUT_PART, DueList.OPENED_ON, DueList.SHUT_HOURS};

    assertEquals("nozzle | 2021-05-31 | 9000.0", line(rows.get(0), columns));
    assertEquals("nrv-spring | - | 5000.0", line(rows.get(1), columns));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void sinceAndRemainingMakeUpTheLimitAndTheBoundsStandInOrder(long seed) {
    Random random = new Random(seed);
    for (TableRow row : rows(random.nextInt(25), drawn(random))) {
      row.find(DueList.REMAINING)
          .ifPresent(
              left -> assertEquals(row.need(DueList.LIMIT), left + row.need(DueList.HOURS), 1e-9));
      assertEquals(
          row.find(DueForecast.DUE_ON).isEmpty(), row.find(DueForecast.NO_DATE).isPresent());
      row.find(DueForecast.DUE_ON)
          .ifPresent(due -> assertTrue(row.need(DueForecast.DUE_EARLY).compareTo(due) <= 0));
      row.find(DueForecast.DUE_LATE)
          .ifPresent(late -> assertTrue(row.need(DueForecast.DUE_ON).compareTo(late) <= 0));
    }
  }

  /** ISO dates sort as text. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void moreRunningNeverMakesAnythingDueLater(long seed) {
    PositionStanding[] positions = drawn(new Random(seed));
    for (int hoursADay = 1; hoursADay < 24; hoursADay++) {
      List<TableRow> slow = rows(hoursADay, positions);
      List<TableRow> fast = rows(hoursADay + 1L, positions);
      for (int i = 0; i < slow.size(); i++) {
        assertEquals(
            slow.get(i).find(DueForecast.DUE_ON).isPresent(),
            fast.get(i).find(DueForecast.DUE_ON).isPresent());
        Optional<String> later = slow.get(i).find(DueForecast.DUE_ON);
        Optional<String> earlier = fast.get(i).find(DueForecast.DUE_ON);
        later.ifPresent(day -> assertTrue(earlier.orElseThrow().compareTo(day) <= 0));
      }
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void theOrderOfPositionsChangesNoRow(long seed) {
    Random random = new Random(seed);
    List<PositionStanding> positions = new ArrayList<>(List.of(drawn(random)));
    List<TableRow> inOrder = rows(12, positions.toArray(PositionStanding[]::new));
    Collections.shuffle(positions, random);
    List<TableRow> shuffled = rows(12, positions.toArray(PositionStanding[]::new));

    assertFalse(inOrder.isEmpty());
    assertEquals(new HashSet<>(inOrder), new HashSet<>(shuffled));
  }

  private static PositionStanding[] drawn(Random random) {
    PositionStanding[] positions = new PositionStanding[6];
    for (int i = 0; i < positions.length; i++) {
      positions[i] =
          random.nextInt(4) == 0
              ? unknown(i + 1, random.nextInt(10_000))
              : overhauled(
                  random.nextBoolean()
                      ? TestCatalogue.INJECTOR
                      : limited(5_000 + random.nextInt(5_000), 12 + random.nextInt(60)),
                  i + 1,
                  "2023-0" + (1 + random.nextInt(9)) + "-15",
                  random.nextInt(10_000));
    }
    return positions;
  }
}
