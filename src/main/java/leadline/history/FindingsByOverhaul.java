package leadline.history;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import leadline.fleet.Finding;
import leadline.fleet.OverhaulId;
import leadline.fleet.Part;
import leadline.history.FindingProblem.FindingWithoutOverhaul;

/** The findings of a vessel, by overhaul and part. */
final class FindingsByOverhaul {

  private final Map<OverhaulId, List<Finding>> findings;

  FindingsByOverhaul(List<Finding> findings) {
    this.findings =
        findings.stream()
            .sorted(Comparator.comparing(Finding::part).thenComparing(Finding::modeNumber))
            .collect(Collectors.groupingBy(Finding::overhaul));
  }

  List<Finding> of(OverhaulId overhaul) {
    return findings.getOrDefault(overhaul, List.of());
  }

  PartFinding of(OverhaulId overhaul, Part part) {
    return new PartFinding(
        part, of(overhaul).stream().filter(row -> row.part().equals(part.name())).toList());
  }

  /** The findings of overhauls that are not on record. */
  List<FindingProblem> strays(Set<OverhaulId> onRecord) {
    return findings.values().stream()
        .flatMap(List::stream)
        .filter(finding -> !onRecord.contains(finding.overhaul()))
        .<FindingProblem>map(
            stray -> new FindingWithoutOverhaul(stray.overhaul(), stray.part(), stray.origin()))
        .toList();
  }
}
