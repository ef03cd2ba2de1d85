package leadline.summary;

import java.time.Instant;
import java.time.YearMonth;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import leadline.fleet.MachineId;
import leadline.fleet.Overhaul;
import leadline.fleet.OverhaulId;
import leadline.history.HourRule;
import leadline.history.HourSeries.Bounded;
import leadline.history.MachineHistory;
import leadline.history.OverhaulProblem.HoursDisagree;
import leadline.history.ReadingNote;
import leadline.history.Visit;
import leadline.origin.Origin;
import leadline.quantity.RunningHours;

/** Every figure of hours that is used otherwise than it is written, or not at all. */
final class HoursReconciliation implements VesselTable {

  static final TableColumn<String> HOURS_MONTH =
      TableColumn.text("hours_month", "the month of the reading or the overhaul, such as 2024-03");
  static final TableColumn<Instant> AT =
      TableColumn.keyMoment("at", "when the reading was taken, or the item taken out");
  static final TableColumn<String> RECORD =
      TableColumn.key("record", "counter, total or replaced: a reading; else the overhaul");
  static final TableColumn<String> RULE =
      TableColumn.text(
          "rule",
          "why the figure is not used as it is written: " + SharedColumns.words(HourRule.class));
  static final TableColumn<Double> RAW =
      TableColumn.given("raw_h", "h", "the figure as it is written");
  static final TableColumn<Double> USED =
      TableColumn.real(
          "used_h",
          "h",
          "the machine's hours then, on its series through roll-overs and changes of the counter;"
              + " empty before the first trusted reading and after the last");
  static final TableColumn<Double> LOWER =
      TableColumn.real("lower_h", "h", "the least that these can have been");
  static final TableColumn<Double> UPPER =
      TableColumn.real("upper_h", "h", "the most that these can have been");
  static final TableColumn<String> FROM_FILE =
      TableColumn.text("from_file", "the export file of the figure");
  static final TableColumn<Long> FROM_LINE =
      TableColumn.count("from_line", "the line on which its row begins");

  static final TableSpec SPEC =
      TableSpec.of(
          "hours_reconciliation",
          "Running hours that are not used as they are written: raw, used, bounds and the rule.",
          List.of(
              SharedColumns.MONTH,
              SharedColumns.KNOWN_AT,
              VesselColumns.VESSEL,
              VesselColumns.MACHINE,
              HOURS_MONTH,
              AT,
              RECORD,
              RULE,
              RAW,
              USED,
              LOWER,
              UPPER,
              FROM_FILE,
              FROM_LINE));

  /** A figure that was written, and what the series says of its moment. */
  private record Line(
      MachineId machine,
      Instant at,
      String record,
      HourRule rule,
      RunningHours raw,
      Optional<Bounded> used,
      Origin origin) {}

  @Override
  public TableSpec spec() {
    return SPEC;
  }

  /** By machine, then by time, up to the month's end. */
  @Override
  public List<TableRow> rows(VesselAccount vessel, Edition edition) {
    Map<OverhaulId, HourRule> disagreeing = new HashMap<>();
    vessel.problems().stream()
        .filter(HoursDisagree.class::isInstance)
        .map(HoursDisagree.class::cast)
        .forEach(
            problem -> {
              disagreeing.put(problem.overhaul(), HourRule.OVERHAUL_HOURS);
              problem.following().forEach(id -> disagreeing.put(id, HourRule.SAME_SHIFT));
            });
    return vessel.history().machines().stream()
        .flatMap(machine -> Stream.concat(readings(machine), overhauls(machine, disagreeing)))
        .filter(line -> !line.at().isAfter(edition.month().end()))
        .sorted(
            Comparator.comparing((Line line) -> line.machine().machine())
                .thenComparing(Line::at)
                .thenComparing(Line::record))
        .map(line -> row(line, edition))
        .toList();
  }

  private static Stream<Line> readings(MachineHistory machine) {
    return machine.hours().notes().stream().map(note -> line(note, machine));
  }

  private static Line line(ReadingNote note, MachineHistory machine) {
    return new Line(
        machine.machine().id(),
        note.reading().at(),
        note.reading().kind().word(),
        note.rule(),
        note.reading().hours(),
        machine.hours().at(note.reading().at()),
        note.reading().origin());
  }

  private static Stream<Line> overhauls(
      MachineHistory machine, Map<OverhaulId, HourRule> disagreeing) {
    return machine.visits().stream()
        .map(Visit::overhaul)
        .flatMap(
            overhaul ->
                Stream.ofNullable(disagreeing.get(overhaul.id()))
                    .map(rule -> line(overhaul, rule, machine)));
  }

  private static Line line(Overhaul overhaul, HourRule rule, MachineHistory machine) {
    return new Line(
        machine.machine().id(),
        overhaul.removedAt(),
        overhaul.id().overhaul(),
        rule,
        overhaul.machineHours().orElseThrow(),
        machine.hours().at(overhaul.removedAt()),
        overhaul.origin());
  }

  private static TableRow row(Line line, Edition edition) {
    YearMonth month = YearMonth.from(line.at().minusNanos(1).atZone(ZoneOffset.UTC));
    return edition
        .row(SPEC)
        .with(VesselColumns.VESSEL, line.machine().vessel())
        .with(VesselColumns.MACHINE, line.machine().machine())
        .with(HOURS_MONTH, month.toString())
        .with(AT, line.at())
        .with(RECORD, line.record())
        .with(RULE, line.rule().word())
        .with(RAW, line.raw().hours())
        .with(USED, line.used().map(bounds -> bounds.hours().hours()))
        .with(LOWER, line.used().map(bounds -> bounds.lower().hours()))
        .with(UPPER, line.used().map(bounds -> bounds.upper().hours()))
        .with(FROM_FILE, line.origin().file())
        .with(FROM_LINE, line.origin().line())
        .build();
  }
}
