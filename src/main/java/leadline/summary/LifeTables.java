package leadline.summary;

import java.io.Serializable;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import leadline.history.MachineHistory;

/** The lives of all parts, to be worked out group by group. */
final class LifeTables implements Serializable {

  private final Scope scope;
  private final Strata<PartSubject, LifeCounts> strata = new Strata<>();

  LifeTables(Scope scope) {
    this.scope = scope;
  }

  void add(MachineHistory history) {
    VesselModel member = VesselModel.of(history.machine());
    for (PartSubject subject : subjects()) {
      if (subject.isOn(history.machine())) {
        strata.add(
            subject,
            member,
            LifeCounts.of(history, subject, subject.window().endingWith(scope.month())));
      }
    }
  }

  void merge(LifeTables other) {
    strata.merge(other.strata);
  }

  /** By component, part, level, stratum. */
  List<LifeGroup> groups(Instant knownAt) {
    Edition edition = new Edition(scope.month(), knownAt);
    List<LifeGroup> groups = new ArrayList<>();
    for (PartSubject subject : subjects()) {
      strata.of(subject).forEach(stratum -> groups.add(new LifeGroup(edition, subject, stratum)));
    }
    return groups;
  }

  private List<PartSubject> subjects() {
    return PartSubject.each(scope.catalogue()).stream()
        .filter(subject -> subject.window() == Window.SINCE_START)
        .toList();
  }
}
