package leadline.problem;

import java.io.Serializable;
import leadline.origin.Origin;

/** A contradiction in the records of a vessel, met when its history was rebuilt. */
public interface Problem extends Serializable {

  String vessel();

  /** The record in question, as the ship names it. */
  String record();

  Origin origin();

  /** What is wrong, with the figures, and what would settle it, in words for the ship. */
  String sentence();

  /** The kind's name, such as {@code impossible-reading}. */
  default String kind() {
    return RuleName.of(getClass());
  }
}
