package leadline.summary;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import leadline.fleet.Reason;
import leadline.history.Census;
import leadline.history.Condition;
import leadline.history.CurrentRecords;
import leadline.history.VesselHistory;
import leadline.origin.BatchTimes;
import org.junit.jupiter.api.Test;

/** A vessel with an engine that runs 20 h a day and a compressor that runs 5; by hand. */
class FleetMonthTest {

  private static final TestMachine ENGINE =
      TestMachine.engine("plover", "TWS-A", 6)
          .observed("2020-12-31", "2024-12-31")
          .running(20, 1)
          .visit(
              TestCatalogue.INJECTOR,
              "2024-12-05",
              Reason.PLANNED,
              TestMachine.opened(TestCatalogue.NRV_SPRING, Condition.WORKING))
          .visit(
              TestCatalogue.INJECTOR,
              "2024-12-31",
              Reason.BREAKDOWN,
              TestMachine.notOpened(TestCatalogue.NRV_SPRING),
              TestMachine.opened(TestCatalogue.NOZZLE, Condition.FAILED))
          .visit(TestCatalogue.INJECTOR, "2024-12-20", Reason.TEST_ONLY)
          .visit(TestCatalogue.INJECTOR, "2024-11-30", Reason.CONDITION);
  private static final TestMachine COMPRESSOR =
      TestMachine.compressor("plover", "ac1", "KM-1")
          .observed("2020-12-31", "2024-12-31")
          .running(5)
          .visit(TestCatalogue.COMPRESSOR_VALVE, "2024-12-10", Reason.CONDITION);

  private static TableRow row() {
    VesselHistory history =
        new VesselHistory("plover", List.of(ENGINE.history(), COMPRESSOR.history()));
    return new FleetMonth()
        .rows(
            new VesselAccount(
                new CurrentRecords("plover", List.of(), Set.of(), Census.EMPTY, List.of()),
                history,
                List.of(),
                new BatchTimes(Map.of(), Rows.KNOWN_AT)),
            new Edition(Rows.MONTH, Rows.KNOWN_AT))
        .get(0);
  }

  private static List<Object> cells(TableColumn<?>... columns) {
    List<Object> cells = new ArrayList<>();
    for (TableColumn<?> column : columns) {
      cells.add(row().need(column));
    }
    return cells;
  }

  /** 31 days x 20 h; 366 days x 20 h; the compressor's hours are not the main engine's. */
  @Test
  void hoursAreTheMainEngines() {
    assertEquals(
        List.of(2L, 1L, 620.0, 7_320.0),
        cells(
            FleetMonth.MACHINES,
            FleetMonth.MAIN_ENGINES,
            FleetMonth.MONTH_HOURS,
            FleetMonth.YEAR_HOURS));
  }

  /** Two injectors with a spring each, one of them opened, and a valve without; a test is none. */
  @Test
  void overhaulsOfTheMonthAreThoseOfAllMachines() {
    assertEquals(
        List.of(3L, 1L, 1L, 2L, 1L),
        cells(
            FleetMonth.OVERHAULS,
            FleetMonth.CONDITION,
            FleetMonth.BREAKDOWNS,
            FleetMonth.SPRINGS,
            FleetMonth.SPRINGS_OPENED));
  }

  /**
   * 366 of 9,150 h are repaired. Of the three overhauls' nozzles, springs and rings, and the
   * valve's plate, 3 of 10 have a word about opening: 0.3 is below 0.5.
   */
  @Test
  void theWorstIngredientIsTheGrade() {
    assertEquals(
        List.of(0.04, 0.0, 0.3, "D"),
        cells(
            ReportingColumns.REPAIRED_SHARE,
            ReportingColumns.QUESTIONS_PER_100,
            ReportingColumns.STATED_SHARE,
            ReportingColumns.GRADE));
  }

  @Test
  void theStepsOfTheGradeAreThoseThatItsRuleNames() {
    assertEquals(DataGrade.A, grade(7, 0.01, 5, 0.95));
    assertEquals(DataGrade.B, grade(8, 0.01, 5, 0.95));
    assertEquals(DataGrade.B, grade(7, 0.011, 5, 0.95));
    assertEquals(DataGrade.C, grade(7, 0.01, 20.1, 0.95));
    assertEquals(DataGrade.C, grade(7, 0.01, 5, 0.79));
    assertEquals(DataGrade.D, grade(93, 0.01, 5, 0.95));
    assertEquals(
        DataGrade.D,
        DataGrade.of(
            Optional.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty()));
  }

  private static DataGrade grade(long days, double repaired, double questions, double stated) {
    return DataGrade.of(
        Optional.of(days),
        OptionalDouble.of(repaired),
        OptionalDouble.of(questions),
        OptionalDouble.of(stated));
  }
}
