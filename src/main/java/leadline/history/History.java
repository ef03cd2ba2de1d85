package leadline.history;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import leadline.fleet.Catalogue;
import leadline.fleet.Component;
import leadline.fleet.Finding;
import leadline.fleet.Item;
import leadline.fleet.MachineEntry;
import leadline.fleet.MachineId;
import leadline.fleet.Overhaul;
import leadline.fleet.Reading;
import leadline.history.ItemProblem.ItemNotSeenSince;
import leadline.problem.Checked;
import leadline.problem.Problem;
import leadline.quantity.RunningHours;

/** Rebuilds what happened on vessels from their records. */
public final class History {

  private static final Comparator<MachineEntry> IN_ORDER =
      Comparator.comparing((MachineEntry entry) -> entry.id().machine())
          .thenComparing(entry -> entry.id().succession());

  private final List<VesselRecords> vessels;
  private final String pool;
  private final Catalogue catalogue;
  private final RunningHours tolerance;
  private final Instant cutOff;
  private final Workbook workbook;

  /** By machine; overhauls after the cut-off are not seen. */
  private final Map<MachineId, List<Overhaul>> overhauls;

  private final Map<MachineId, List<Reading>> readings;
  private final Map<Item, List<PlacedVisit>> workshop = new LinkedHashMap<>();

  private History(
      List<VesselRecords> vessels, Catalogue catalogue, RunningHours tolerance, Instant cutOff) {
    this.vessels = vessels.stream().sorted(Comparator.comparing(VesselRecords::vessel)).toList();
    this.pool = this.vessels.get(0).vessel();
    this.catalogue = catalogue;
    this.tolerance = tolerance;
    this.cutOff = cutOff;
    List<Finding> findings =
        this.vessels.stream().flatMap(records -> records.findings().stream()).toList();
    this.workbook = new Workbook(new FindingsByOverhaul(findings), tolerance);
    this.overhauls =
        this.vessels.stream()
            .flatMap(records -> records.overhauls().stream())
            .filter(overhaul -> !overhaul.removedAt().isAfter(cutOff))
            .collect(Collectors.groupingBy(Overhaul::machine));
    this.readings =
        this.vessels.stream()
            .flatMap(records -> records.readings().stream())
            .collect(Collectors.groupingBy(Reading::machine));
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
    return rebuild(List.of(records), catalogue, tolerance, cutOff).get(0);
  }

  /**
   * The histories of vessels that exchange items: a serial is one item on all of them.
   *
   * @param vessels at least one
   * @return each vessel's own, by vessel
   */
  public static List<Checked<VesselHistory, Problem>> rebuild(
      List<VesselRecords> vessels, Catalogue catalogue, RunningHours tolerance, Instant cutOff) {
    return new History(vessels, catalogue, tolerance, cutOff).rebuild();
  }

  private List<Checked<VesselHistory, Problem>> rebuild() {
    Map<String, List<MachineLog>> machines = new LinkedHashMap<>();
    vessels.forEach(records -> machines.put(records.vessel(), machines(records)));
    Map<MachineId, MachineLog> byId =
        machines.values().stream()
            .flatMap(List::stream)
            .collect(Collectors.toMap(machine -> machine.entry().id(), machine -> machine));
    List<FollowedPosition> positions =
        machines.values().stream()
            .flatMap(List::stream)
            .flatMap(machine -> positions(machine).stream())
            .toList();
    workbook.report(SerialQuestions.among(positions));
    followItems(positions, byId);
    workbook.report(
        workbook
            .findings()
            .strays(
                vessels.stream()
                    .flatMap(records -> records.overhauls().stream())
                    .map(Overhaul::id)
                    .collect(Collectors.toSet())));
    vessels.forEach(records -> workbook.report(UnregisteredMachine.among(records, cutOff)));
    vessels.forEach(records -> workbook.report(MachineChanged.among(records, cutOff)));
    return vessels.stream()
        .map(records -> checked(records, machines.getOrDefault(records.vessel(), List.of())))
        .toList();
  }

  private List<MachineLog> machines(VesselRecords records) {
    return records.machines().stream().sorted(IN_ORDER).map(this::log).toList();
  }

  private Checked<VesselHistory, Problem> checked(
      VesselRecords records, List<MachineLog> machines) {
    return new Checked<>(
        new VesselHistory(records.vessel(), machines.stream().map(workbook::history).toList()),
        workbook.problems().stream()
            .filter(problem -> problem.vessel().equals(records.vessel()))
            .toList());
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
      visit.workshopSerial().ifPresent(serial -> noteInWorkshop(serial, visit, machine.entry()));
    }
    return MachinePositions.follow(pool, machine, visits.value(), catalogue, workbook);
  }

  private void noteInWorkshop(String serial, PlacedVisit visit, MachineEntry machine) {
    Item item = new Item.Named(pool, visit.component().name(), machine.atFirst().model(), serial);
    workshop.computeIfAbsent(item, first -> new ArrayList<>()).add(visit);
  }

  private void followItems(List<FollowedPosition> positions, Map<MachineId, MachineLog> machines) {
    Map<Item, List<Stint>> stints =
        positions.stream()
            .flatMap(position -> position.stints().stream())
            .collect(Collectors.groupingBy(Stint::item, LinkedHashMap::new, Collectors.toList()));
    Set<Item> items = new LinkedHashSet<>(stints.keySet());
    items.addAll(workshop.keySet());
    for (Item item : items) {
      Component component = catalogue.component(item.component()).orElseThrow();
      Checked<ItemRecord, OverhaulProblem> record =
          ItemRecord.inTime(
              item, stints.getOrDefault(item, List.of()), workshop.getOrDefault(item, List.of()));
      workbook.report(record.problems());
      workshop.getOrDefault(item, List.of()).stream()
          .filter(visit -> !record.value().workshop().contains(visit))
          .forEach(workbook::addOfNoItem);
      ItemLedger.follow(record.value(), component, workbook);
      workbook.report(unseen(record.value(), machines).stream().toList());
    }
  }

  private static Optional<ItemNotSeenSince> unseen(
      ItemRecord record, Map<MachineId, MachineLog> machines) {
    return record.item() instanceof Item.Named
        ? record
            .last()
            .filter(PlacedVisit::isObserved)
            .flatMap(visit -> ItemNotSeenSince.of(record.item(), visit, machines))
        : Optional.empty();
  }
}
