package leadline.history;

import java.util.Set;
import leadline.fleet.FoundWord;

/** What a visit tells of a part. Silence is never a yes or a no. */
public sealed interface Inspection {

  /**
   * Opened, and its condition stated.
   *
   * @param found one word at least
   */
  record Opened(Condition verdict, Set<FoundWord> found) implements Inspection {
    public Opened {
      found = Set.copyOf(found);
    }
  }

  /** The ship says that it was not opened. */
  record NotOpened() implements Inspection {}

  /** There is a finding, but it leaves open whether the part was opened, or what was found. */
  record Unstated() implements Inspection {}

  /** There is no finding of the part. */
  record NoFinding() implements Inspection {}
}
