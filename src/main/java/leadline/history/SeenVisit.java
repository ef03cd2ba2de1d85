package leadline.history;

import java.util.ArrayList;
import java.util.List;
import leadline.quantity.RunningHours;

/**
 * A visit to an item, with what was seen of its parts.
 *
 * @param parts in the catalogue's order
 */
record SeenVisit(PlacedVisit visit, List<SeenPart> parts) {

  SeenVisit {
    parts = List.copyOf(parts);
  }

  /** With what the workshop saw of the same overhaul. */
  SeenVisit and(List<SeenPart> rest) {
    List<SeenPart> whole = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      whole.add(parts.get(i).and(rest.get(i).finding()));
    }
    return new SeenVisit(visit, whole);
  }

  /** One part at the visit, and the age that later statements may still date. */
  record SeenPart(PartFinding finding, PartAge age, RunningHours at) {
    SeenPart and(PartFinding rest) {
      return new SeenPart(finding.and(rest), age, at);
    }

    PartState state() {
      return finding.stateAt(age.at(at));
    }
  }
}
