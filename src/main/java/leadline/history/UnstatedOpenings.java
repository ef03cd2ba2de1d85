package leadline.history;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import leadline.fleet.Finding;
import leadline.fleet.OverhaulId;
import leadline.history.FindingProblem.FoundWithoutOpened;
import leadline.history.SilenceProblem.OpenedUnstated;
import leadline.problem.Problem;

/**
 * Asks once for each part about all findings of it that leave open whether it was opened, or how it
 * was found. Of parts so found without being said to be opened up to three are asked about one by
 * one; of a ship that does so more often, together with the rest.
 */
final class UnstatedOpenings {

  private static final int ONE_BY_ONE = 3;

  private record ComponentPart(String component, String part) {}

  private record Place(OverhaulId overhaul, String part) {}

  private final Map<Place, List<Finding>> findings;
  private final Map<OverhaulId, String> components;

  private UnstatedOpenings(VesselRecords records, VesselHistory history) {
    this.findings =
        records.findings().stream()
            .collect(
                Collectors.groupingBy(
                    finding -> new Place(finding.overhaul(), finding.part()),
                    LinkedHashMap::new,
                    Collectors.toList()));
    this.components =
        history.machines().stream()
            .flatMap(machine -> machine.visits().stream())
            .filter(visit -> visit.overhaul().reason().isOverhaul())
            .collect(Collectors.toMap(visit -> visit.overhaul().id(), v -> v.component().name()));
  }

  /**
   * The problems, with those of unstated openings gathered.
   *
   * @param records findings by arrival
   */
  static List<Problem> gathered(
      VesselRecords records, VesselHistory history, List<Problem> problems) {
    return new UnstatedOpenings(records, history).gathered(records.vessel(), history, problems);
  }

  private List<Problem> gathered(String vessel, VesselHistory history, List<Problem> problems) {
    Map<Place, FoundWithoutOpened> found = new LinkedHashMap<>();
    for (Problem problem : problems) {
      if (problem instanceof FoundWithoutOpened one && components.containsKey(one.overhaul())) {
        found.put(new Place(one.overhaul(), one.part()), one);
      }
    }
    Map<ComponentPart, Long> often =
        found.keySet().stream().collect(Collectors.groupingBy(this::of, Collectors.counting()));
    Set<Place> alone =
        found.keySet().stream()
            .filter(place -> often.getOrDefault(of(place), 0L) <= ONE_BY_ONE)
            .collect(Collectors.toSet());
    List<Problem> gathered = new ArrayList<>();
    for (Problem problem : problems) {
      boolean isGathered =
          problem instanceof FoundWithoutOpened one
              && components.containsKey(one.overhaul())
              && !alone.contains(new Place(one.overhaul(), one.part()));
      if (!isGathered) {
        gathered.add(problem);
      }
    }
    unstated(history, alone)
        .forEach((part, places) -> gathered.add(question(vessel, part, places)));
    return gathered;
  }

  private ComponentPart of(Place place) {
    return new ComponentPart(components.getOrDefault(place.overhaul(), ""), place.part());
  }

  /** By the overhauls' names, whatever the order in which they arrived. */
  private Map<ComponentPart, List<Place>> unstated(VesselHistory history, Set<Place> alone) {
    Set<Place> silent =
        history.machines().stream()
            .flatMap(machine -> machine.visits().stream())
            .flatMap(
                visit ->
                    visit.parts().stream()
                        .filter(part -> part.inspection() instanceof Inspection.Unstated)
                        .map(part -> new Place(visit.overhaul().id(), part.part().name())))
            .filter(place -> components.containsKey(place.overhaul()) && !alone.contains(place))
            .collect(Collectors.toSet());
    return findings.keySet().stream()
        .filter(silent::contains)
        .sorted(
            Comparator.comparing((Place place) -> place.overhaul().overhaul())
                .thenComparing(Place::part))
        .collect(Collectors.groupingBy(this::of, LinkedHashMap::new, Collectors.toList()));
  }

  private OpenedUnstated question(String vessel, ComponentPart part, List<Place> places) {
    return new OpenedUnstated(
        vessel,
        part.component(),
        part.part(),
        places.stream().map(Place::overhaul).toList(),
        findings.getOrDefault(places.get(0), List.of()).get(0).origin());
  }
}
