package leadline.summary;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import leadline.fleet.Written;
import leadline.history.Inspection;
import leadline.history.MachineHistory;
import leadline.history.PartStanding;
import leadline.history.PartStanding.LastFinding;
import leadline.history.PositionStanding;
import leadline.quantity.Days;
import leadline.quantity.RunningHours;

/**
 * Every part of the positions that a machine's next batch opens, for the briefing of its vessel. A
 * table of the run that is not published.
 */
public final class JobCards implements VesselTable {

  public static final TableColumn<Double> AGE =
      TableColumn.real(
          "hours_since_new_h",
          "h",
          "hours since new of the piece; empty where its origin is unknown");
  public static final TableColumn<String> SEEN_FROM =
      TableColumn.text(
          "seen_from", "the day when the piece was renewed or its item came into sight");
  public static final TableColumn<Double> SEEN =
      TableColumn.given(
          "seen_h",
          "h",
          "hours that the item ran since seen_from: the least that the piece has run");
  public static final TableColumn<Double> WORKED_AT =
      TableColumn.real(
          "worked_at_h",
          "h",
          "hours since new at which it was last shown to work; empty where never");
  public static final TableColumn<String> KEPT_FAILED =
      TableColumn.text(
          "kept_failed", "yes where it was found failed and not renewed since, else no");
  public static final TableColumn<Long> LAPS =
      TableColumn.count("laps", "how often it was lapped, on record, since seen_from");
  public static final TableColumn<String> LAST_OVERHAUL =
      TableColumn.remark("last_overhaul", "the last overhaul or test that wrote of the part");
  public static final TableColumn<String> LAST_ON = TableColumn.remark("last_on", "the day of it");
  public static final TableColumn<String> LAST_OPENED =
      TableColumn.remark("last_opened", "opened, not opened or not stated");
  public static final TableColumn<String> LAST_FOUND =
      TableColumn.remark("last_found", "the found words; empty where none");
  public static final TableColumn<String> LAST_ACTION =
      TableColumn.remark("last_action", "the actions; empty where none");
  public static final TableColumn<Double> PRESSURE =
      TableColumn.real(
          "opening_pressure_bar",
          "bar",
          "as left, at the item's last overhaul or test that states it; empty where none does");
  public static final TableColumn<String> PRESSURE_ON =
      TableColumn.remark("opening_pressure_on", "the day of that overhaul or test");

  public static final TableColumn<Double> STATED_LAPS =
      TableColumn.real(
          "stated_laps",
          "1",
          "times the seat was lapped so far, by the item's last overhaul or test that states it;"
              + " empty where none does");
  public static final TableColumn<String> STATED_LAPS_ON =
      TableColumn.remark("stated_laps_on", "the day of that overhaul or test");

  public static final TableSpec SPEC =
      TableSpec.of(
          "job_cards",
          "Every part of the positions of each machine's next batch.",
          VesselColumns.OF_VESSEL,
          List.of(
              VesselColumns.MACHINE,
              SharedColumns.COMPONENT,
              VesselColumns.POSITION,
              SharedColumns.PART),
          List.of(AGE, SEEN_FROM, SEEN, WORKED_AT, KEPT_FAILED, LAPS),
          List.of(LAST_OVERHAUL, LAST_ON, LAST_OPENED, LAST_FOUND, LAST_ACTION),
          List.of(PRESSURE, PRESSURE_ON, STATED_LAPS, STATED_LAPS_ON));

  private static final int NEXT = 1;

  @Override
  public TableSpec spec() {
    return SPEC;
  }

  /** In the order of the due list, then of the catalogue's parts. */
  @Override
  public List<TableRow> rows(VesselAccount vessel, Edition edition) {
    ItemStatements statements = ItemStatements.of(vessel);
    List<TableRow> rows = new ArrayList<>();
    for (MachineHistory machine : vessel.history().machines()) {
      for (PositionStanding position : nextBatch(machine, edition)) {
        for (PartStanding part : position.parts()) {
          TableRow.Builder row = VesselColumns.row(SPEC, vessel, edition, machine, position);
          addPart(row, part);
          position.item().ifPresent(item -> statements.in(row, item));
          rows.add(row.build());
        }
      }
    }
    return rows;
  }

  /** The positions due first on the machine, if any of them is overdue or due soon. */
  private static List<PositionStanding> nextBatch(MachineHistory machine, Edition edition) {
    List<DuePosition> positions = DuePosition.of(machine, edition.month());
    DueGroups groups = new DueGroups(positions);
    List<DuePosition> batch =
        positions.stream()
            .filter(
                position -> groups.of(position).filter(group -> group.number() == NEXT).isPresent())
            .toList();
    boolean isComing = batch.stream().anyMatch(position -> position.standing().isComing());
    return isComing ? batch.stream().map(DuePosition::position).toList() : List.of();
  }

  private static void addPart(TableRow.Builder row, PartStanding part) {
    row.with(SharedColumns.PART, part.part().name())
        .with(AGE, part.age().map(RunningHours::hours))
        .with(SEEN_FROM, Days.asWritten(part.seenFrom()))
        .with(SEEN, part.seen().hours())
        .with(WORKED_AT, part.workedAt().map(RunningHours::hours))
        .with(KEPT_FAILED, part.keptFailed() ? "yes" : "no")
        .with(LAPS, (long) part.laps());
    part.last().ifPresent(last -> addLast(row, last));
  }

  private static void addLast(TableRow.Builder row, LastFinding last) {
    row.with(LAST_OVERHAUL, last.overhaul().overhaul())
        .with(LAST_ON, Days.asWritten(last.at()))
        .with(LAST_OPENED, opened(last.inspection()))
        .with(LAST_FOUND, words(last.found()))
        .with(LAST_ACTION, words(last.actions()));
  }

  private static String opened(Inspection inspection) {
    if (inspection instanceof Inspection.Opened) {
      return "opened";
    }
    return inspection instanceof Inspection.NotOpened ? "not opened" : "not stated";
  }

  private static Optional<String> words(Collection<? extends Written> words) {
    return Optional.of(words.stream().map(Written::word).sorted().collect(Collectors.joining(", ")))
        .filter(text -> !text.isEmpty());
  }
}
