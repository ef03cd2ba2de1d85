package leadline.summary;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import leadline.fleet.Item;
import leadline.fleet.LimitBy;
import leadline.fleet.OverhaulLimit;
import leadline.history.MachineHistory;
import leadline.history.PositionStanding;
import leadline.history.PositionStanding.ShutPart;
import leadline.history.PositionStanding.Since;
import leadline.quantity.Days;
import leadline.quantity.Period;
import leadline.quantity.RunningHours;
import leadline.summary.DuePosition.Standing;

/** The next overhaul of every position of every observed machine. */
public final class DueList implements VesselTable {

  public static final TableColumn<String> MODEL = TableColumn.text("model", "the machine's model");
  public static final TableColumn<Long> UNIT =
      TableColumn.count("unit", "the cylinder; 0 where there is one position a machine");
  public static final TableColumn<Long> PLACE =
      TableColumn.count("place", "which of the unit's; 0 where there is one position a unit");
  public static final TableColumn<String> ITEM =
      TableColumn.remark(
          "item", "the item there: serial, or @position; empty where none was fitted again");
  public static final TableColumn<Instant> COUNTED_TO =
      TableColumn.moment(
          "counted_to", "until when hours are known: the month's end, or the last reading before");
  public static final TableColumn<String> SINCE =
      TableColumn.text(
          "since",
          "from when on hours are counted: overhaul, the position's last on record; new, its first"
              + " day in service; unknown, the start of records, with no overhaul since");
  public static final TableColumn<String> SINCE_ON =
      TableColumn.text(
          "since_on", "the day of that overhaul or start, at its end; else the moment");
  public static final TableColumn<String> OVERHAUL =
      TableColumn.remark("overhaul", "the record of the last overhaul");
  public static final TableColumn<Double> RUN =
      TableColumn.given(
          "run_h",
          "h",
          "hours that the machine ran since since_on; where since is unknown, the least that the"
              + " position has run since its last overhaul");
  public static final TableColumn<Double> REPAIRED =
      TableColumn.given("repaired_h", "h", "those of them that rest on a repaired reading");
  public static final TableColumn<Double> HOURS =
      TableColumn.real(
          "hours_since_overhaul_h",
          "h",
          "hours since the last overhaul, or since new; empty where since is unknown");
  public static final TableColumn<Double> LIMIT =
      TableColumn.given("limit_h", "h", "the limit in running hours that is reached first");
  public static final TableColumn<String> LIMIT_BY =
      TableColumn.text("limit_by", "who sets it: " + SharedColumns.words(LimitBy.class));
  public static final TableColumn<String> LIMIT_SOURCE =
      TableColumn.text("limit_source", "where it is written");
  public static final TableColumn<Double> LIMIT_MONTHS =
      TableColumn.real(
          "limit_months", "months", "the limit by the calendar; empty where none is set");
  public static final TableColumn<String> MONTHS_SOURCE =
      TableColumn.remark("months_source", "who sets the limit by the calendar, and where");
  public static final TableColumn<Double> REMAINING =
      TableColumn.real(
          "remaining_h",
          "h",
          "limit_h less hours_since_overhaul_h, negative when overdue; empty where since is"
              + " unknown");
  public static final TableColumn<String> STANDING =
      TableColumn.text(
          "standing",
          SharedColumns.words(Standing.class)
              + ": overdue beyond a limit by the hours on record or the calendar; due-soon with"
              + " due_early at most "
              + DuePosition.SOON_DAYS
              + " days after the month; unknown where since is unknown and run_h within limit_h");
  public static final TableColumn<String> SHUT_PART =
      TableColumn.remark(
          "shut_part",
          "of the item's parts that may fail unseen and are proven by no test, the one shut"
              + " longest, by the item's hours; one never opened on record comes first");
  public static final TableColumn<String> OPENED_ON =
      TableColumn.remark(
          "opened_on",
          "when that part was last opened with its condition stated, or renewed; empty where never"
              + " on record");
  public static final TableColumn<Double> SHUT_HOURS =
      TableColumn.real(
          "shut_h",
          "h",
          "hours that the item ran since opened_on; where empty, since it came into sight, which"
              + " is the least");
  public static final TableColumn<String> GROUP =
      TableColumn.remark(
          "due_group",
          "what can be done together: positions of the machine due within "
              + DueGroups.WINDOW
              + " h of the first of them, those overdue counted as due now; empty where not known");
  public static final TableColumn<Long> GROUP_SIZE =
      TableColumn.count("due_group_positions", "positions in that group; 0 where there is none");

  /** The standings of an overhaul that is to be done now or soon. */
  public static final Set<String> COMING =
      Stream.of(Standing.values())
          .filter(Standing::isComing)
          .map(Standing::word)
          .collect(Collectors.toUnmodifiableSet());

  public static final TableSpec SPEC =
      TableSpec.of(
          "due_list",
          "The next overhaul of every position: hours, limit, forecast. Limits of maker, class and"
              + " flag prevail.",
          VesselColumns.OF_VESSEL,
          List.of(
              VesselColumns.MACHINE,
              MODEL,
              SharedColumns.COMPONENT,
              VesselColumns.POSITION,
              UNIT,
              PLACE,
              ITEM),
          List.of(COUNTED_TO, SINCE, SINCE_ON, OVERHAUL, RUN, REPAIRED, HOURS),
          List.of(LIMIT, LIMIT_BY, LIMIT_SOURCE, LIMIT_MONTHS, MONTHS_SOURCE, REMAINING),
          DueForecast.COLUMNS,
          List.of(STANDING, SHUT_PART, OPENED_ON, SHUT_HOURS, GROUP, GROUP_SIZE));

  @Override
  public TableSpec spec() {
    return SPEC;
  }

  /** By machine, then by component in the catalogue's order, unit and place. */
  @Override
  public List<TableRow> rows(VesselAccount vessel, Edition edition) {
    List<TableRow> rows = new ArrayList<>();
    for (MachineHistory machine : vessel.history().machines()) {
      List<DuePosition> positions = DuePosition.of(machine, edition.month());
      DueGroups groups = new DueGroups(positions);
      Optional<RecentRunning> running = RecentRunning.of(machine);
      for (DuePosition position : positions) {
        TableRow.Builder row =
            VesselColumns.row(SPEC, vessel, edition, machine, position.position());
        addPosition(row, machine, position.position());
        addLimits(row, position);
        DueForecast.in(row, position.dates(), running);
        addParts(row, position);
        addGroup(row, machine, groups.of(position));
        rows.add(row.build());
      }
    }
    return rows;
  }

  private static void addPosition(
      TableRow.Builder row, MachineHistory machine, PositionStanding standing) {
    Instant end = machine.observed().map(Period::end).orElseThrow();
    Since since = standing.since();
    row.with(MODEL, machine.machine().model())
        .with(UNIT, (long) standing.position().unit())
        .with(PLACE, (long) standing.position().place())
        .with(ITEM, standing.item().map(Item::label))
        .with(COUNTED_TO, end)
        .with(SINCE, word(since))
        .with(SINCE_ON, Days.asWritten(since.at()))
        .with(RUN, standing.run().hours())
        .with(REPAIRED, machine.hours().exposure(new Period(since.at(), end)).repaired().hours())
        .with(HOURS, Optional.of(standing.run().hours()).filter(hours -> since.isKnown()));
    if (since instanceof Since.Overhaul overhaul) {
      row.with(OVERHAUL, overhaul.overhaul().overhaul());
    }
  }

  private static void addLimits(TableRow.Builder row, DuePosition position) {
    OverhaulLimit<RunningHours> limit = position.position().component().hourLimit();
    row.with(LIMIT, limit.length().hours())
        .with(LIMIT_BY, limit.by().word())
        .with(LIMIT_SOURCE, limit.source())
        .with(REMAINING, position.remaining().map(RunningHours::hours));
    position
        .position()
        .component()
        .monthLimit()
        .ifPresent(
            months ->
                row.with(LIMIT_MONTHS, months.length().doubleValue())
                    .with(MONTHS_SOURCE, months.by().word() + ": " + months.source()));
    row.with(STANDING, position.standing().word());
  }

  private static void addParts(TableRow.Builder row, DuePosition position) {
    Optional<ShutPart> shut = position.longestShut();
    row.with(SHUT_PART, shut.map(part -> part.part().name()))
        .with(OPENED_ON, shut.flatMap(ShutPart::opened).map(Days::asWritten))
        .with(SHUT_HOURS, shut.map(part -> part.run().hours()));
  }

  private static void addGroup(
      TableRow.Builder row, MachineHistory machine, Optional<DueGroups.Group> group) {
    String machineName = machine.machine().id().machine();
    row.with(GROUP, group.map(its -> machineName + "-" + its.number()))
        .with(GROUP_SIZE, group.map(its -> (long) its.positions()).orElse(0L));
  }

  private static String word(Since since) {
    if (since instanceof Since.Overhaul) {
      return "overhaul";
    }
    return since instanceof Since.New ? "new" : "unknown";
  }
}
