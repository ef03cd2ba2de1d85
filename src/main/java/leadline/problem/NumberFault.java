package leadline.problem;

/** A cell that should hold a number and does not, or one out of range. */
public sealed interface NumberFault extends RowFault {

  /** The offending text. */
  String text();

  /** Hours that are not written as plain digits. */
  record NotHours(String column, String text) implements NumberFault {
    @Override
    public String sentence() {
      return column
          + " "
          + Excerpt.of(text)
          + " is not running hours: write digits with a point before the decimals and no sign,"
          + " thousands separator, unit or exponent, as in 8550.5.";
    }
  }

  /** A number that is not a plain decimal. */
  record NotANumber(String column, String text) implements NumberFault {
    @Override
    public String sentence() {
      return column
          + " "
          + Excerpt.of(text)
          + " is not a number: write digits with a point before the decimals and no thousands"
          + " separator, unit or exponent, as in 320.5.";
    }
  }

  /** A count that is not a whole number. */
  record NotAWholeNumber(String column, String text) implements NumberFault {
    @Override
    public String sentence() {
      return column
          + " "
          + Excerpt.of(text)
          + " is not a whole number: write digits only, as in 12, with a minus in front where the"
          + " number is negative.";
    }
  }

  /** A number outside the column's range, whose ends are both allowed. */
  record OutOfRange(String column, String text, String least, String most) implements NumberFault {
    @Override
    public String sentence() {
      return column
          + " "
          + Excerpt.of(text)
          + " is out of range: write a number from "
          + least
          + " to "
          + most
          + ".";
    }
  }
}
