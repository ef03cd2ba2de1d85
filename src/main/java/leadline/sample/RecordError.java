package leadline.sample;

import leadline.fleet.Written;

/** What goes wrong when a ship writes its records, and how often if nothing else is said. */
public enum RecordError implements Written {
  /** An overhaul without machine hours. */
  NO_HOURS(.03, "overhauls"),
  /** Machine hours wrong by 200 h or more. */
  HOURS_OFF(.015, "overhauls"),
  /** Two digits of the machine hours change places. */
  DIGITS_TRANSPOSED(.005, "overhauls"),
  /** An overhaul and its findings are written twice. */
  DUPLICATE(.01, "overhauls"),
  /** Day and month change places. */
  DATE_ORDER(.005, "overhauls"),
  /** A swap of spares lacks the serial of one of the two. */
  SERIAL_LACKING(.15, "swaps of spares"),
  /** A renewal is written as a part kept. */
  RENEWAL_UNREPORTED(.06, "renewals"),
  /** A part that nobody opened is written as opened and sound. */
  UNOPENED_AS_SOUND(.30, "parts left shut on careless vessels"),
  /** Neither opened nor found is filled in. */
  BLANK_FINDING(.08, "findings"),
  /** The condition is in words that the layout does not know. */
  UNMAPPED_WORDING(.04, "findings"),
  /** A month without readings. */
  MISSING_MONTH(.03, "months of a machine"),
  /** A month in which the last figure is copied on. */
  STALE_MONTH(.01, "months of a machine"),
  /** The main engine gets a new counter. */
  COUNTER_REPLACED(5 / 24.0, "vessels"),
  /** The main engine's counter passes 99,999. */
  ROLL_OVER(1 / 24.0, "vessels"),
  /** All files of the vessel part their cells by semicolons, so that no reader of commas can. */
  SEPARATOR_FAULT(0, "vessels");

  private final double usual;
  private final String counted;

  RecordError(double usual, String counted) {
    this.usual = usual;
    this.counted = counted;
  }

  public double usual() {
    return usual;
  }

  /** What the share is a share of. */
  public String counted() {
    return counted;
  }
}
