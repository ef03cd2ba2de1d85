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
import leadline.fleet.RecordKind;
import leadline.history.Exposure;
import leadline.history.Inspection;
import leadline.history.MachineHistory;
import leadline.history.PartState;
import leadline.history.Visit;
import leadline.quantity.Days;
import leadline.quantity.Period;
import leadline.quantity.RunningHours;

/** The columns that say how well a vessel reports. */
final class ReportingColumns {

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

  static final List<TableColumn<?>> COLUMNS =
      List.of(
          QUESTIONS,
          SINCE_RECORD,
          SINCE_READING,
          REPAIRED_SHARE,
          QUESTIONS_PER_100,
          STATED_SHARE,
          GRADE);

  private ReportingColumns() {}

  /**
   * @param machines those of the vessel that are observed
   */
  static void in(
      TableRow.Builder row, VesselAccount vessel, List<MachineHistory> machines, Edition edition) {
    Instant end = edition.month().end();
    Optional<Long> sinceReading =
        machines.stream()
            .flatMap(machine -> machine.hours().span().stream())
            .map(span -> daysBetween(span.end(), end))
            .max(Long::compare);
    Period lastYear = Window.TWELVE_MONTHS.endingWith(edition.month());
    List<Exposure> exposures =
        machines.stream().map(machine -> machine.exposureWithin(lastYear)).toList();
    OptionalDouble repaired =
        share(
            sum(exposures.stream().map(Exposure::repaired)).tenths(),
            sum(exposures.stream().map(Exposure::hours)).tenths());
    OptionalDouble questions =
        share(
            100 * vessel.questions(),
            Overhauls.within(machines, Window.SINCE_START.endingWith(edition.month())).size());
    OptionalDouble stated = statedShare(Overhauls.within(machines, lastYear));
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

  private static RunningHours sum(Stream<RunningHours> hours) {
    return hours.reduce(RunningHours.ZERO, RunningHours::plus);
  }

  private static long daysBetween(Instant last, Instant end) {
    return last.isAfter(end) ? 0 : Duration.between(last, end).toDays();
  }

  private static OptionalDouble share(long part, long whole) {
    return whole == 0 ? OptionalDouble.empty() : OptionalDouble.of(part / (double) whole);
  }
}
