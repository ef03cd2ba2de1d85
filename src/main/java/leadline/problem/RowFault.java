package leadline.problem;

import java.io.Serializable;

/** A rule of the plain layout that a row of an export broke. */
public sealed interface RowFault extends Serializable
    permits LineFault, EmptyCell, NumberFault, TimeFault, NameFault, ReturnFault {

  /** The rule's name, such as {@code no-such-date}. */
  default String rule() {
    return RuleName.of(getClass());
  }

  /** The column of the offending cell; empty where the whole row is at fault. */
  String column();

  /** What is wrong and what to write instead, in words for the ship. */
  String sentence();
}
