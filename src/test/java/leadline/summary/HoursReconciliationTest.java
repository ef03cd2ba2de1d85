package leadline.summary;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import leadline.fleet.Cells;
import leadline.fleet.HoursLayout;
import leadline.fleet.MachineLayout;
import leadline.fleet.OverhaulLayout;
import leadline.fleet.ReadingKind;
import leadline.fleet.Reason;
import leadline.fleet.RecordKind;
import leadline.fleet.SourcedRow;
import leadline.history.ArrivedRow;
import leadline.history.CurrentRecords;
import leadline.history.History;
import leadline.history.ShipQuestions;
import leadline.history.VesselHistory;
import leadline.origin.BatchTimes;
import leadline.origin.FileDigest;
import leadline.origin.Origin;
import leadline.problem.Checked;
import leadline.problem.Problem;
import leadline.quantity.Days;
import leadline.quantity.ReportMonth;
import leadline.quantity.RunningHours;
import org.junit.jupiter.api.Test;

/**
 * What a log that lost a month shows. The engine runs 300 h a month from 0 at the end of 2023, and
 * April's total is missing: the log has 900 h at the end of March, 1,200 of May, 1,500 of June, and
 * so on, 300 h less than the counter that the overhauls' figures are read from.
 */
class HoursReconciliationTest {

  private static final String VESSEL = "hesper-lark";
  private static final Instant KNOWN_AT = Instant.parse("2025-01-20T06:30:00Z");

  private final List<ArrivedRow> rows = new ArrayList<>();

  @Test
  void aShiftOfTheLogStandsThereMonthByMonthAndIsAskedAboutOnce() {
    logWithoutApril();
    overhaul("O1", 1, "2024-06-30", 1800);
    overhaul("O2", 2, "2024-07-31", 2100);
    overhaul("O3", 1, "2024-09-30", 2700);
    overhaul("O4", 2, "2024-10-31", 2600); // the log has 2,700: 100 h below, not 300 above
    assertEquals(
        List.of(
            "2024-06 O1 overhaul-hours 1800.0 for 1500.0",
            "2024-07 O2 same-shift 2100.0 for 1800.0",
            "2024-09 O3 same-shift 2700.0 for 2400.0",
            "2024-10 O4 overhaul-hours 2600.0 for 2700.0"),
        lines("2024-12"));
    assertEquals(List.of("O1", "O4"), asked("2024-12"));
  }

  @Test
  void aMonthBeforeTheOverhaulsThatFollowHasTheFirstAlone() {
    logWithoutApril();
    overhaul("O1", 1, "2024-06-30", 1800);
    overhaul("O2", 2, "2024-07-31", 2100);
    assertEquals(List.of("2024-06 O1 overhaul-hours 1800.0 for 1500.0"), lines("2024-06"));
    assertEquals(List.of("O1"), asked("2024-06"));
  }

  private void logWithoutApril() {
    arrives(
        Cells.of(RecordKind.MACHINES)
            .with(MachineLayout.VESSEL, VESSEL)
            .with(MachineLayout.MACHINE, "ME")
            .with(MachineLayout.KIND, "main-engine")
            .with(MachineLayout.MODEL, "QX-60")
            .with(MachineLayout.CYLINDERS, 2L));
    reading("2023-12-31", 0, ReadingKind.COUNTER);
    for (int month = 1; month <= 12; month++) {
      if (month != 4) {
        reading(YearMonth.of(2024, month).atEndOfMonth().toString(), 300, ReadingKind.TOTAL);
      }
    }
  }

  private void reading(String day, long hours, ReadingKind kind) {
    arrives(
        Cells.of(RecordKind.HOURS)
            .with(HoursLayout.VESSEL, VESSEL)
            .with(HoursLayout.MACHINE, "ME")
            .with(HoursLayout.READ_AT, Days.endOf(LocalDate.parse(day)))
            .with(HoursLayout.HOURS, RunningHours.ofHours(hours))
            .with(HoursLayout.KIND, kind));
  }

  private void overhaul(String name, long unit, String day, long hours) {
    arrives(
        Cells.of(RecordKind.OVERHAULS)
            .with(OverhaulLayout.VESSEL, VESSEL)
            .with(OverhaulLayout.OVERHAUL, name)
            .with(OverhaulLayout.MACHINE, "ME")
            .with(OverhaulLayout.COMPONENT, "fuel-injector")
            .with(OverhaulLayout.UNIT, unit)
            .with(OverhaulLayout.DONE_ON, LocalDate.parse(day))
            .with(OverhaulLayout.MACHINE_HOURS, RunningHours.ofHours(hours))
            .with(OverhaulLayout.REASON, Reason.PLANNED));
  }

  private void arrives(Cells.Builder cells) {
    FileDigest digest = FileDigest.of("export".getBytes(StandardCharsets.UTF_8));
    rows.add(
        new ArrivedRow(
            1, new SourcedRow(cells.build(), new Origin("export", digest, rows.size() + 1L))));
  }

  private List<String> lines(String month) {
    return table(month, HoursReconciliation.SPEC).stream()
        .map(
            row ->
                "%s %s %s %s for %s"
                    .formatted(
                        row.need(HoursReconciliation.HOURS_MONTH),
                        row.need(HoursReconciliation.RECORD),
                        row.need(HoursReconciliation.RULE),
                        row.need(HoursReconciliation.RAW),
                        row.need(HoursReconciliation.USED)))
        .toList();
  }

  private List<String> asked(String month) {
    return table(month, VesselQueries.SPEC).stream()
        .filter(row -> row.need(VesselQueries.KIND).equals("hours-disagree"))
        .map(row -> row.need(VesselQueries.OVERHAUL))
        .sorted()
        .toList();
  }

  private List<TableRow> table(String name, TableSpec spec) {
    ReportMonth month = ReportMonth.parse(name);
    CurrentRecords records = CurrentRecords.of(VESSEL, rows);
    Checked<VesselHistory, Problem> history =
        History.rebuild(
            records.forHistory(), TestCatalogue.CATALOGUE, RunningHours.ofHours(24), month.end());
    List<Problem> problems =
        ShipQuestions.about(records, history, TestCatalogue.CATALOGUE, month.end(), KNOWN_AT);
    return new VesselTables(month, KNOWN_AT)
        .add(
            new VesselAccount(
                records, history.value(), problems, new BatchTimes(Map.of(1L, KNOWN_AT), KNOWN_AT)))
        .rows()
        .getOrDefault(spec, List.of());
  }
}
