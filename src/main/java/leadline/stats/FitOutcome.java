package leadline.stats;

import java.util.Optional;
import java.util.function.Function;

/**
 * What came of fitting a distribution by maximum likelihood.
 *
 * @param <F> the fit, where there is one
 */
public sealed interface FitOutcome<F> {

  /** The fit; empty where there is none. */
  Optional<F> fit();

  /** The likelihood has one highest point, and this is it. */
  record Fitted<F>(F found) implements FitOutcome<F> {
    @Override
    public Optional<F> fit() {
      return Optional.of(found);
    }
  }

  /**
   * The likelihood has no highest point, so that no estimate exists, whatever a search may end on.
   *
   * @param limits the one-sided limit that the data support all the same, at a confidence; empty
   *     where they support none
   */
  record NoFiniteMaximum<F>(Reason reason, Function<Confidence, Optional<OneSidedLimit>> limits)
      implements FitOutcome<F> {
    @Override
    public Optional<F> fit() {
      return Optional.empty();
    }
  }

  /** Why the likelihood has no highest point. */
  enum Reason {
    /** No life is known to have ended: the scale grows for ever. */
    NO_FAILURE,
    /** No life is known to have outlived any age beyond its entry: the scale falls to 0. */
    NO_SURVIVAL,
    /** All could have ended at one age, as when all failures are tied at the largest age. */
    ALL_AT_ONE_AGE,
    /** Only the share ended by one age is known: shapes without number are equally likely. */
    ONE_INSPECTION_AGE,
    /**
     * The older did not fail more often than the younger: the shape falls to 0, or with delayed
     * entry the scale.
     */
    NO_RISE_WITH_AGE,
    /** No start led to a highest point, and none of the other reasons is known to hold. */
    NOT_FOUND
  }
}
