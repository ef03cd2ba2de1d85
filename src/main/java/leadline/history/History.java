package leadline.history;

import java.time.Instant;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import leadline.fleet.Catalogue;
import leadline.fleet.Item;
import leadline.fleet.MachineEntry;
import leadline.fleet.MachineId;
import leadline.fleet.Overhaul;
import leadline.fleet.Reading;
import leadline.problem.Checked;
import leadline.problem.Problem;
import leadline.quantity.RunningHours;

/** Rebuilds what happened on a vessel from its records. */
public final class History {

  private final VesselRecords records;
  private final String pool;
  private final Catalogue catalogue;
  private final RunningHours tolerance;
  private final Instant cutOff;
  private final Workbook workbook;

  /** By machine; overhauls after the cut-off are not seen. */
  private final Map<MachineId, List<Overhaul>> overhauls;

  private final Map<MachineId, List<Reading>> readings;

  private History(
      VesselRecords records, Catalogue catalogue, RunningHours tolerance, Instant cutOff) {
    this.records = records;
    this.pool = records.vessel();
    this.catalogue = catalogue;
    this.tolerance = tolerance;
    this.cutOff = cutOff;
    this.workbook = new Workbook(new FindingsByOverhaul(records.findings()), tolerance);
    this.overhauls =
        records.overhauls().stream()
            .filter(overhaul -> !overhaul.removedAt().isAfter(cutOff))
            .collect(Collectors.groupingBy(Overhaul::machine));
    this.readings = records.readings().stream().collect(Collectors.groupingBy(Reading::machine));
  }

  /**
   * The history up to the cut-off, whatever the order of the records, with every contradiction met.
   *
   * @param tolerance how far an overhaul's machine hours may lie outside the bounds of the
   *     machine's log, and a part's stated age from the age rebuilt
   * @param cutOff overhauls after it are not seen; readings after it still serve to interpolate
   */
  public static Checked<VesselHistory, Problem> rebuild(
      VesselRecords records, Catalogue catalogue, RunningHours tolerance, Instant cutOff) {
    return new History(records, catalogue, tolerance, cutOff).rebuild();
  }

  private Checked<VesselHistory, Problem> rebuild() {
    List<MachineLog> machines =
        records.machines().stream()
            .sorted(Comparator.comparing(entry -> entry.id().machine()))
            .map(this::log)
            .toList();
    List<FollowedPosition> positions =
        machines.stream().flatMap(machine -> positions(machine).stream()).toList();
    workbook.report(SerialQuestions.among(positions));
    followItems(positions.stream().flatMap(position -> position.stints().stream()).toList());
    workbook.report(
        workbook
            .findings()
            .strays(records.overhauls().stream().map(Overhaul::id).collect(Collectors.toSet())));
    workbook.report(UnregisteredMachine.among(records, cutOff));
    return new Checked<>(
        new VesselHistory(records.vessel(), machines.stream().map(workbook::history).toList()),
        workbook.problems());
  }

  /** What is wrong with a reading after the cut-off is a later report's matter. */
  private MachineLog log(MachineEntry entry) {
    Checked<HourSeries, ReadingProblem> hours =
        HourSeriesBuilder.build(
            readings.getOrDefault(entry.id(), List.of()), entry.counterDigits());
    workbook.report(
        hours.problems().stream().filter(problem -> !problem.at().isAfter(cutOff)).toList());
    return MachineLog.of(entry, hours.value(), cutOff);
  }

  private List<FollowedPosition> positions(MachineLog machine) {
    Checked<PlacedVisits, OverhaulProblem> visits =
        VisitPlacer.place(
            overhauls.getOrDefault(machine.entry().id(), List.of()), machine, catalogue, tolerance);
    workbook.report(visits.problems());
    for (PlacedVisit visit : visits.value().visits()) {
      workbook.report(FindingQuestions.about(visit, workbook.findings()));
    }
    return MachinePositions.follow(pool, machine, visits.value(), catalogue, workbook);
  }

  private void followItems(List<Stint> stints) {
    Map<Item, List<Stint>> byItem =
        stints.stream()
            .collect(Collectors.groupingBy(Stint::item, LinkedHashMap::new, Collectors.toList()));
    byItem.forEach(
        (item, itsStints) -> {
          Checked<List<Stint>, OverhaulProblem> inTime = ItemStints.inTime(itsStints);
          workbook.report(inTime.problems());
          ItemLedger.follow(
              item, catalogue.component(item.component()).orElseThrow(), inTime.value(), workbook);
        });
  }
}
