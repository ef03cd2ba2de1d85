package leadline.summary;

import java.io.Serializable;
import java.util.List;
import leadline.quantity.RunningHours;

/**
 * The lives of a part that a stratum puts together. What they tell is worked out apart from all
 * other groups, which may be done elsewhere.
 */
public record LifeGroup(Edition edition, PartSubject subject, Stratum<LifeCounts> stratum)
    implements Serializable {

  /** Its rows of the tables of lives. */
  public LifeRows rows() {
    RoutineLives lives = RoutineLives.of(stratum, subject.part());
    return new LifeRows(
        new PartLifetimes(this, lives).rows(),
        subject.part().isSpring() ? new SpringSurvival(this, lives).rows() : List.of());
  }

  RunningHours policyInterval() {
    return subject.component().interval();
  }

  /** A row begun with the shared columns and the evidence. */
  TableRow.Builder row(TableSpec spec, RoutineLives lives, Verdict verdict) {
    LifeCounts all = stratum.total();
    return new Evidence(
            lives.total().failures(), all.openings().opened(), all.openings().overhauled(), verdict)
        .in(all.hours().in(edition.row(spec, subject, stratum)));
  }
}
