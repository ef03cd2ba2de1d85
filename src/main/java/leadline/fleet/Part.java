package leadline.fleet;

import java.io.Serializable;
import java.util.Set;

/**
 * A part of a component, as the catalogue describes it.
 *
 * @param failed found words that mean the part's function was lost
 * @param beyondLimit found words of a part still working that, renewed, was rejected on condition
 * @param provenBy test results that prove the part's function without opening it
 * @param isoSubunit the subunit of ISO 14224 to which the part belongs
 */
public record Part(
    String name,
    PartShape shape,
    FailureShows failureShows,
    Set<FoundWord> failed,
    Set<FoundWord> beyondLimit,
    Set<TestResult> provenBy,
    Renewal renewal,
    Clock clock,
    String isoSubunit)
    implements Serializable {

  public Part {
    failed = Set.copyOf(failed);
    beyondLimit = Set.copyOf(beyondLimit);
    provenBy = Set.copyOf(provenBy);
  }

  /** Whether a failure can stay unseen that nothing but opening the part would show. */
  public boolean isSeenOnlyOpened() {
    return failureShows == FailureShows.MAY_STAY_UNSEEN && provenBy.isEmpty();
  }

  public boolean isSpring() {
    return shape == PartShape.SPRING;
  }
}
