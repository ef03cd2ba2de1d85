package leadline.summary;

import java.util.List;
import leadline.fleet.Reason;
import leadline.history.Inspection;
import leadline.history.MachineHistory;
import leadline.history.PartState;
import leadline.history.Visit;
import leadline.quantity.Period;
import leadline.quantity.RunningHours;
import leadline.summary.DuePosition.Standing;

/** A vessel's month in one row, and how well the vessel reports. */
final class FleetMonth implements VesselTable {

  private static final String MAIN_ENGINE = "main-engine";

  static final TableColumn<Long> MACHINES =
      TableColumn.count("machines", "machines observed before the month's end");
  static final TableColumn<Long> MAIN_ENGINES =
      TableColumn.count("main_engines", "main engines among them");
  static final TableColumn<Double> MONTH_HOURS =
      TableColumn.given(
          "main_engine_month_h", "h", "hours that the main engines ran in the month, as observed");
  static final TableColumn<Double> YEAR_HOURS =
      TableColumn.given("main_engine_year_h", "h", "the same since the calendar year began");
  static final TableColumn<Long> OVERHAULS =
      TableColumn.count("overhauls", "overhauls done in the month, of all components");
  static final TableColumn<Long> CONDITION = TableColumn.count("condition", "those on condition");
  static final TableColumn<Long> BREAKDOWNS =
      TableColumn.count("breakdowns", "those after a breakdown");
  static final TableColumn<Long> SPRINGS =
      TableColumn.count("springs_overhauled", "springs in the items overhauled in the month");
  static final TableColumn<Long> SPRINGS_OPENED =
      TableColumn.count("springs_opened", "those that were opened and their condition stated");
  static final TableColumn<Long> POSITIONS =
      TableColumn.count("positions", "the vessel's rows in due_list");
  static final TableColumn<Long> DUE_SOON = standing(Standing.DUE_SOON);
  static final TableColumn<Long> OVERDUE = standing(Standing.OVERDUE);
  static final TableColumn<Long> DUE_UNKNOWN =
      TableColumn.count("due_unknown", "those unknown there");

  static final TableSpec SPEC =
      TableSpec.of(
          "fleet_month",
          "Each vessel's month: hours, overhauls, what is due, and how well the vessel reports.",
          VesselColumns.OF_VESSEL,
          List.of(MACHINES, MAIN_ENGINES, MONTH_HOURS, YEAR_HOURS),
          List.of(OVERHAULS, CONDITION, BREAKDOWNS, SPRINGS, SPRINGS_OPENED),
          List.of(POSITIONS, DUE_SOON, OVERDUE, DUE_UNKNOWN),
          ReportingColumns.COLUMNS);

  @Override
  public TableSpec spec() {
    return SPEC;
  }

  @Override
  public List<TableRow> rows(VesselAccount vessel, Edition edition) {
    List<MachineHistory> machines =
        vessel.history().machines().stream()
            .filter(machine -> machine.observed().isPresent())
            .toList();
    TableRow.Builder row = VesselColumns.row(SPEC, vessel, edition);
    addHours(row, machines, edition);
    addOverhauls(row, machines, edition);
    addDue(row, machines, edition);
    ReportingColumns.in(row, vessel, machines, edition);
    return List.of(row.build());
  }

  private static void addHours(
      TableRow.Builder row, List<MachineHistory> machines, Edition edition) {
    List<MachineHistory> engines =
        machines.stream().filter(machine -> machine.machine().kind().equals(MAIN_ENGINE)).toList();
    Period year =
        new Period(
            edition.month().startOfLast(edition.month().month().getMonthValue()),
            edition.month().end());
    row.with(MACHINES, identifiers(machines))
        .with(MAIN_ENGINES, identifiers(engines))
        .with(MONTH_HOURS, hours(engines, Window.MONTH.endingWith(edition.month())).hours())
        .with(YEAR_HOURS, hours(engines, year).hours());
  }

  /** A machine that replaced another under its identifier is one with it. */
  private static long identifiers(List<MachineHistory> machines) {
    return machines.stream().map(machine -> machine.machine().id().machine()).distinct().count();
  }

  private static void addOverhauls(
      TableRow.Builder row, List<MachineHistory> machines, Edition edition) {
    List<Visit> overhauls = Overhauls.within(machines, Window.MONTH.endingWith(edition.month()));
    List<PartState> springs =
        overhauls.stream()
            .flatMap(visit -> visit.parts().stream())
            .filter(state -> state.part().isSpring())
            .toList();
    row.with(OVERHAULS, (long) overhauls.size())
        .with(CONDITION, count(overhauls, Reason.CONDITION))
        .with(BREAKDOWNS, count(overhauls, Reason.BREAKDOWN))
        .with(SPRINGS, (long) springs.size())
        .with(
            SPRINGS_OPENED,
            springs.stream()
                .filter(state -> state.inspection() instanceof Inspection.Opened)
                .count());
  }

  private static void addDue(TableRow.Builder row, List<MachineHistory> machines, Edition edition) {
    List<DuePosition> positions =
        machines.stream()
            .flatMap(machine -> DuePosition.of(machine, edition.month()).stream())
            .toList();
    row.with(POSITIONS, (long) positions.size())
        .with(DUE_SOON, count(positions, Standing.DUE_SOON))
        .with(OVERDUE, count(positions, Standing.OVERDUE))
        .with(DUE_UNKNOWN, count(positions, Standing.UNKNOWN));
  }

  private static RunningHours hours(List<MachineHistory> machines, Period window) {
    return machines.stream()
        .map(machine -> machine.exposureWithin(window).hours())
        .reduce(RunningHours.ZERO, RunningHours::plus);
  }

  private static long count(List<Visit> overhauls, Reason reason) {
    return overhauls.stream().filter(visit -> visit.overhaul().reason() == reason).count();
  }

  private static long count(List<DuePosition> positions, Standing standing) {
    return positions.stream().filter(position -> position.standing() == standing).count();
  }

  private static TableColumn<Long> standing(Standing standing) {
    return TableColumn.count(
        standing.word().replace('-', '_'), "those " + standing.word() + " there");
  }
}
