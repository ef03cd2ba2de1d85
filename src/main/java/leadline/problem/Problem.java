package leadline.problem;

import java.io.Serializable;
import leadline.origin.Origin;

/** A contradiction in the records of a vessel, met when its history was rebuilt. */
public interface Problem extends Serializable {

  String vessel();

  /** The record in question, as the ship names it. */
  String record();

  Origin origin();

  /** What is wrong, with the figures, and what was made of it, in words for the ship. */
  String evidence();

  /** What would settle it, in words for the ship. */
  String request();

  /** Evidence and request. */
  default String sentence() {
    return evidence() + " " + request();
  }

  /** The kind's name, such as {@code impossible-reading}. */
  default String kind() {
    return RuleName.of(getClass());
  }
}
