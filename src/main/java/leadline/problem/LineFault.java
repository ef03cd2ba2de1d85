package leadline.problem;

/** A row that is broken as a whole, before any of its cells can be read. */
public sealed interface LineFault extends RowFault {

  @Override
  default String column() {
    return "";
  }

  /** The row has more or fewer fields than the header. */
  record WrongFieldCount(int found, int expected) implements LineFault {
    @Override
    public String sentence() {
      return "The row has "
          + found
          + (found == 1 ? " field" : " fields")
          + " and the header "
          + expected
          + ": write one field for each column, and put a field that holds a comma or a line break"
          + " in double quotes.";
    }
  }

  /** A field opens with a double quote that no later line closes. */
  record OpenQuote() implements LineFault {
    @Override
    public String sentence() {
      return "A field begins with a double quote that is never closed: close it before the next"
          + " comma, and write a double quote inside a quoted field twice, as in \"5\"\" pipe\".";
    }
  }

  /**
   * Something follows the double quote that closes a field.
   *
   * @param text what follows
   */
  record TextAfterQuote(String text) implements LineFault {
    @Override
    public String sentence() {
      return Excerpt.of(text)
          + " follows a closing double quote: only a comma may follow it; write a double quote"
          + " inside a quoted field twice, as in \"5\"\" pipe\".";
    }
  }

  /**
   * Blanks stand between a comma and the double quote that opens a field.
   *
   * @param text the double quote and what follows
   */
  record BlankBeforeQuote(String text) implements LineFault {
    @Override
    public String sentence() {
      return "A blank stands before the opening double quote of "
          + Excerpt.of(text)
          + ": let the double quote follow the comma at once.";
    }
  }

  /** The row is longer than any honest row. */
  record RowTooLong(int mostCharacters) implements LineFault {
    @Override
    public String sentence() {
      return "The row is longer than "
          + mostCharacters
          + " characters: look for a missing line break, and shorten the remark.";
    }
  }

  /**
   * The row holds bytes that are not UTF-8.
   *
   * @param text the first such byte, shown as {@code \xNN}, and what stands around it
   */
  record NotUtf8(String text) implements LineFault {
    @Override
    public String sentence() {
      return "The row is not UTF-8 at "
          + Excerpt.of(text)
          + ": export the file as UTF-8, or write the letter anew.";
    }
  }

  /** The row holds a byte of value zero, as a damaged file does. */
  record NulByte() implements LineFault {
    @Override
    public String sentence() {
      return "The row holds a NUL byte, which no text has: the file was damaged, so export it"
          + " again.";
    }
  }
}
