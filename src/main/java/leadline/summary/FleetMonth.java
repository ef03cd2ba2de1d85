package leadline.summary;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.stream.Stream;
import leadline.fleet.HoursLayout;
import leadline.fleet.OverhaulLayout;
import leadline.fleet.Reason;
import leadline.fleet.RecordKind;
import leadline.history.Exposure;
import leadline.history.Inspection;
import leadline.history.MachineHistory;
import leadline.history.PartState;
import leadline.history.Visit;
import leadline.quantity.Days;
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
  static final TableColumn<Long> QUESTIONS =
      TableColumn.count(
          "questions", "questions open: contradictions in the records, each kind and record once");
  static final TableColumn<Double> SINCE_RECORD =
      TableColumn.real(
          "days_since_record",
          "days",
          "whole days from the latest reading or overhaul on record to the month's end, for want of"
              + " the day of the export; empty where there is none");
  static final TableColumn<Double> SINCE_READING =
      TableColumn.real(
          "days_since_reading",
          "days",
          "whole days without known hours before the month's end, of the observed machine silent"
              + " longest; empty where there is none");
  static final TableColumn<Double> REPAIRED_SHARE =
      TableColumn.real(
          "repaired_share",
          "1",
          "share of the hours of all machines in the last 12 months that rests on repaired readings");
  static final TableColumn<Double> QUESTIONS_PER_100 =
      TableColumn.real(
          "questions_per_100_overhauls",
          "questions per 100 overhauls",
          "questions to all overhauls counted since the start; empty where there is none");
  static final TableColumn<Double> STATED_SHARE =
      TableColumn.real(
          "opening_stated_share",
          "1",
          "share, of the parts that nothing but opening tells of, at overhauls of the last 12"
              + " months, of those stated as opened, with their condition, or as not opened");
  static final TableColumn<String> GRADE = TableColumn.text("data_grade", DataGrade.RULE);

  static final TableSpec SPEC =
      TableSpec.of(
          "fleet_month",
          "Each vessel's month: hours, overhauls, what is due, and how well the vessel reports.",
          List.of(
              SharedColumns.MONTH,
              SharedColumns.KNOWN_AT,
              VesselColumns.VESSEL,
              VesselColumns.VESSEL_NAME,
              MACHINES,
              MAIN_ENGINES,
              MONTH_HOURS,
              YEAR_HOURS),
          List.of(OVERHAULS, CONDITION, BREAKDOWNS, SPRINGS, SPRINGS_OPENED),
          List.of(POSITIONS, DUE_SOON, OVERDUE, DUE_UNKNOWN, QUESTIONS),
          List.of(
              SINCE_RECORD, SINCE_READING, REPAIRED_SHARE, QUESTIONS_PER_100, STATED_SHARE, GRADE));

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
    addQuality(row, vessel, machines, edition);
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
    row.with(MACHINES, (long) machines.size())
        .with(MAIN_ENGINES, (long) engines.size())
        .with(MONTH_HOURS, hours(engines, Window.MONTH.endingWith(edition.month())).hours())
        .with(YEAR_HOURS, hours(engines, year).hours());
  }

  private static void addOverhauls(
      TableRow.Builder row, List<MachineHistory> machines, Edition edition) {
    List<Visit> overhauls = overhauls(machines, Window.MONTH, edition);
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

  private static void addQuality(
      TableRow.Builder row, VesselAccount vessel, List<MachineHistory> machines, Edition edition) {
    Instant end = edition.month().end();
    Optional<Long> sinceReading =
        machines.stream()
            .flatMap(machine -> machine.hours().span().stream())
            .map(span -> daysBetween(span.end(), end))
            .max(Long::compare);
    List<Exposure> exposures =
        machines.stream()
            .map(
                machine -> machine.exposureWithin(Window.TWELVE_MONTHS.endingWith(edition.month())))
            .toList();
    OptionalDouble repaired =
        share(
            sum(exposures.stream().map(Exposure::repaired)).tenths(),
            sum(exposures.stream().map(Exposure::hours)).tenths());
    OptionalDouble questions =
        share(100 * vessel.questions(), overhauls(machines, Window.SINCE_START, edition).size());
    OptionalDouble stated = statedShare(overhauls(machines, Window.TWELVE_MONTHS, edition));
    row.with(QUESTIONS, vessel.questions())
        .with(SINCE_RECORD, lastRecord(vessel, end).map(last -> (double) daysBetween(last, end)))
        .with(SINCE_READING, sinceReading.map(Long::doubleValue))
        .with(REPAIRED_SHARE, repaired)
        .with(QUESTIONS_PER_100, questions)
        .with(STATED_SHARE, stated)
        .with(GRADE, DataGrade.of(sinceReading, repaired, questions, stated).name());
  }

  private static OptionalDouble statedShare(List<Visit> overhauls) {
    List<PartState> states =
        overhauls.stream()
            .flatMap(visit -> visit.parts().stream())
            .filter(state -> state.part().isSeenOnlyOpened())
            .toList();
    Predicate<PartState> stated =
        state ->
            state.inspection() instanceof Inspection.Opened
                || state.inspection() instanceof Inspection.NotOpened;
    return share(states.stream().filter(stated).count(), states.size());
  }

  private static Optional<Instant> lastRecord(VesselAccount vessel, Instant end) {
    return Stream.concat(
            vessel.records().rows(RecordKind.HOURS).stream()
                .map(reading -> reading.cells().need(HoursLayout.READ_AT)),
            vessel.records().rows(RecordKind.OVERHAULS).stream()
                .map(overhaul -> Days.endOf(overhaul.cells().need(OverhaulLayout.DONE_ON))))
        .filter(moment -> !moment.isAfter(end))
        .max(Instant::compareTo);
  }

  private static List<Visit> overhauls(
      List<MachineHistory> machines, Window window, Edition edition) {
    return machines.stream()
        .flatMap(machine -> Overhauls.within(machine, window.endingWith(edition.month())).stream())
        .toList();
  }

  private static RunningHours hours(List<MachineHistory> machines, Period window) {
    return sum(machines.stream().map(machine -> machine.exposureWithin(window).hours()));
  }

  private static RunningHours sum(Stream<RunningHours> hours) {
    return hours.reduce(RunningHours.ZERO, RunningHours::plus);
  }

  private static long daysBetween(Instant last, Instant end) {
    return last.isAfter(end) ? 0 : Duration.between(last, end).toDays();
  }

  private static OptionalDouble share(long part, long whole) {
    return whole == 0 ? OptionalDouble.empty() : OptionalDouble.of(part / (double) whole);
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
