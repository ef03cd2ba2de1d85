package leadline.sample;

import java.util.List;
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
  /** One letter or digit of a serial is wrong. */
  SERIAL_MISTYPED(.01, "swaps of spares"),
  /** The serial of an item that is fitted elsewhere. */
  SERIAL_OF_ANOTHER(.005, "swaps of spares"),
  /** An exchange of items that nobody writes down. */
  SWAP_UNREPORTED(.005, "swaps of spares"),
  /** A renewal is written as a part kept. */
  RENEWAL_UNREPORTED(.06, "renewals"),
  /** A renewal whose spare is not booked out. */
  MOVEMENT_LACKING(.02, "renewals"),
  /** A spare booked out for a part that was kept. */
  MOVEMENT_NEEDLESS(.001, "parts kept"),
  /** A part that nobody opened is written as opened and sound. */
  UNOPENED_AS_SOUND(.30, "parts left shut on careless vessels"),
  /** Neither opened nor found is filled in. */
  BLANK_FINDING(.08, "findings"),
  /** A condition is filled in and opened is not. */
  FOUND_NOT_OPENED(.005, "findings with a condition"),
  /** A part is said to have been missing. */
  MISSING_FOR_SOUND(.001, "findings with a condition"),
  /** The condition is in words that the layout does not know. */
  UNMAPPED_WORDING(.04, "findings"),
  /** A month without readings. */
  MISSING_MONTH(.03, "months of a machine"),
  /** A month in which the last figure is copied on. */
  STALE_MONTH(.01, "months of a machine"),
  /** Two digits of a reading change places. */
  READING_TRANSPOSED(.0003, "readings"),
  /** A digit of a reading is left out. */
  READING_DIGIT_LOST(.0003, "readings"),
  /** A digit of a reading is written twice. */
  READING_DIGIT_ADDED(.0003, "readings"),
  /** The point of a reading is lost. */
  READING_TENFOLD(.0003, "readings"),
  /** The hours of the month so far in place of a reading, or a reading in place of those. */
  READING_MIXED(.0003, "readings"),
  /** A reading bears the date of the day before or after. */
  READING_DAY_OFF(.0003, "readings"),
  /** A reading bears the year before. */
  READING_YEAR_OFF(.0001, "readings"),
  /** A month whose readings are of the revolution counter. */
  REVOLUTIONS_AS_HOURS(.0005, "months of a machine"),
  /** Hours and minutes stand as if they were hours and decimals. */
  MINUTES_AS_DECIMALS(.01, "machines"),
  /** The main engine gets a new counter, and nobody writes so. */
  COUNTER_UNDECLARED(2 / 24.0, "vessels"),
  /** The main engine gets a new counter. */
  COUNTER_REPLACED(5 / 24.0, "vessels"),
  /** The main engine's counter passes 99,999. */
  ROLL_OVER(1 / 24.0, "vessels"),
  /** All files of the vessel part their cells by semicolons, so that no reader of commas can. */
  SEPARATOR_FAULT(0, "vessels");

  /** What befalls single readings, at most one of them each. */
  static final List<RecordError> SLIPS_OF_READINGS =
      List.of(
          READING_TRANSPOSED,
          READING_DIGIT_LOST,
          READING_DIGIT_ADDED,
          READING_TENFOLD,
          READING_MIXED,
          READING_DAY_OFF,
          READING_YEAR_OFF);

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
