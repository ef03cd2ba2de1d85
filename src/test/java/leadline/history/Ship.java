package leadline.history;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import leadline.fleet.Action;
import leadline.fleet.Cells;
import leadline.fleet.FindingLayout;
import leadline.fleet.FoundWord;
import leadline.fleet.HoursLayout;
import leadline.fleet.MachineLayout;
import leadline.fleet.OverhaulLayout;
import leadline.fleet.ReadingKind;
import leadline.fleet.Reason;
import leadline.fleet.RecordKind;
import leadline.fleet.Revealed;
import leadline.fleet.SourcedRow;
import leadline.fleet.Statement;
import leadline.fleet.TestResult;
import leadline.origin.FileDigest;
import leadline.origin.Origin;
import leadline.quantity.Days;
import leadline.quantity.RunningHours;

/**
 * The records of one invented vessel, written by hand. Days are numbered from 2020-01-01, day 0.
 * Its engine has two cylinders with two injectors each.
 */
final class Ship {

  /** Fills cells of a row. */
  interface Fill {
    void in(Cells.Builder row);
  }

  static final String VESSEL = "hesper-lark";
  static final String ENGINE = "ME";
  static final String MODEL = "QX-60";

  private static final FileDigest FILE =
      FileDigest.of("the ship's export".getBytes(StandardCharsets.UTF_8));

  private final String vessel;
  private final List<SourcedRow> rows = new ArrayList<>();

  Ship() {
    this(VESSEL);
  }

  Ship(String vessel) {
    this.vessel = vessel;
  }

  static LocalDate day(int number) {
    return LocalDate.of(2020, 1, 1).plusDays(number);
  }

  /** The end of the day, which is when its readings and overhauls count. */
  static Instant endOf(int day) {
    return Days.endOf(day(day));
  }

  static RunningHours hours(double hours) {
    return RunningHours.ofTenths(Math.round(hours * 10));
  }

  /** An engine that ran ten hours a day from day 0, at 0 h, to day 2000, at 20,000 h. */
  static Ship tenHoursADay(Fill... engine) {
    return new Ship().engine(engine).counter(0, 0).counter(2000, 20_000);
  }

  /** The same, and new on day 0. */
  static Ship newOnDayZero() {
    return tenHoursADay(row -> row.with(MachineLayout.IN_SERVICE_ON, day(0)));
  }

  Ship engine(Fill... cells) {
    return machine(ENGINE, cells);
  }

  Ship machine(String machine, Fill... cells) {
    Cells.Builder row =
        Cells.of(RecordKind.MACHINES)
            .with(MachineLayout.VESSEL, vessel)
            .with(MachineLayout.MACHINE, machine)
            .with(MachineLayout.KIND, "main-engine")
            .with(MachineLayout.MODEL, MODEL)
            .with(MachineLayout.CYLINDERS, 2L)
            .with(MachineLayout.PLACES_PER_CYLINDER, 2L);
    return add(row, cells);
  }

  Ship counter(int day, double reading) {
    return reading(ReadingKind.COUNTER, day, reading);
  }

  Ship reading(ReadingKind kind, int day, double reading) {
    return reading(ENGINE, kind, endOf(day), reading);
  }

  Ship reading(String machine, ReadingKind kind, Instant at, double reading) {
    return add(
        Cells.of(RecordKind.HOURS)
            .with(HoursLayout.VESSEL, vessel)
            .with(HoursLayout.MACHINE, machine)
            .with(HoursLayout.READ_AT, at)
            .with(HoursLayout.HOURS, hours(reading))
            .with(HoursLayout.KIND, kind));
  }

  /** A planned overhaul of injector 1/1 of the engine, unless the cells say otherwise. */
  Ship overhaul(String overhaul, int day, Fill... cells) {
    Cells.Builder row =
        Cells.of(RecordKind.OVERHAULS)
            .with(OverhaulLayout.VESSEL, vessel)
            .with(OverhaulLayout.OVERHAUL, overhaul)
            .with(OverhaulLayout.MACHINE, ENGINE)
            .with(OverhaulLayout.COMPONENT, "fuel-injector")
            .with(OverhaulLayout.UNIT, 1L)
            .with(OverhaulLayout.PLACE, 1L)
            .with(OverhaulLayout.DONE_ON, day(day))
            .with(OverhaulLayout.REASON, Reason.PLANNED);
    return add(row, cells);
  }

  Ship finding(String overhaul, String part, Fill... cells) {
    Cells.Builder row =
        Cells.of(RecordKind.FINDINGS)
            .with(FindingLayout.VESSEL, vessel)
            .with(FindingLayout.OVERHAUL, overhaul)
            .with(FindingLayout.PART, part);
    return add(row, cells);
  }

  Ship add(Cells.Builder row, Fill... cells) {
    for (Fill cell : cells) {
      cell.in(row);
    }
    rows.add(stored(row.build(), rows.size() + 1));
    return this;
  }

  static SourcedRow stored(Cells cells, int line) {
    return new SourcedRow(cells, new Origin("export.csv", FILE, line));
  }

  static Fill at(int unit, int place) {
    return row ->
        row.with(OverhaulLayout.UNIT, (long) unit).with(OverhaulLayout.PLACE, (long) place);
  }

  static Fill removed(String serial) {
    return row -> row.with(OverhaulLayout.REMOVED_SERIAL, serial);
  }

  static Fill fitted(String serial) {
    return row -> row.with(OverhaulLayout.FITTED_SERIAL, serial);
  }

  static Fill fittedOn(int day) {
    return row -> row.with(OverhaulLayout.FITTED_ON, day(day));
  }

  static Fill machineHours(double hours) {
    return row -> row.with(OverhaulLayout.MACHINE_HOURS, hours(hours));
  }

  static Fill because(Reason reason) {
    return row -> row.with(OverhaulLayout.REASON, reason);
  }

  static Fill tested(TestResult result) {
    return row ->
        row.with(OverhaulLayout.REASON, Reason.TEST_ONLY).with(OverhaulLayout.TEST_RESULT, result);
  }

  /** Opened, found so, and this done. */
  static Fill opened(FoundWord found, Action action) {
    return row ->
        row.with(FindingLayout.OPENED, Statement.YES)
            .with(FindingLayout.FOUND, found)
            .with(FindingLayout.ACTION, action);
  }

  static Fill opened(Statement opened) {
    return row -> row.with(FindingLayout.OPENED, opened);
  }

  static Fill found(FoundWord found) {
    return row -> row.with(FindingLayout.FOUND, found);
  }

  static Fill action(Action action) {
    return row -> row.with(FindingLayout.ACTION, action);
  }

  static Fill inService() {
    return row -> row.with(FindingLayout.REVEALED, Revealed.IN_SERVICE);
  }

  static Fill hoursSinceNew(double hours) {
    return row -> row.with(FindingLayout.HOURS_SINCE_NEW, hours(hours));
  }

  static Fill mode(int number) {
    return row -> row.with(FindingLayout.MODE_NO, (long) number);
  }

  List<SourcedRow> rows() {
    return rows;
  }

  VesselRecords records() {
    return CurrentRecords.of(vessel, rows.stream().map(row -> new ArrivedRow(1, row)).toList())
        .forHistory();
  }

  /** The history up to day 2000. */
  Rebuilt rebuilt() {
    return rebuiltTo(2000);
  }

  Rebuilt rebuiltTo(int day) {
    return new Rebuilt(
        History.rebuild(records(), TestCatalogue.CATALOGUE, RunningHours.ofHours(24), endOf(day)));
  }
}
