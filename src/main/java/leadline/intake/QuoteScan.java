package leadline.intake;

import java.util.Optional;
import leadline.problem.LineFault;

/** Follows the double quotes of a row, line by line, to see where the row ends. */
final class QuoteScan {

  private enum State {
    FIELD_START,
    BLANKS,
    PLAIN,
    QUOTED,
    QUOTE_IN_QUOTED,
    BROKEN
  }

  private State state = State.FIELD_START;
  private int fields = 1;
  private Optional<LineFault> fault = Optional.empty();

  static QuoteScan of(PhysicalLine line) {
    QuoteScan scan = new QuoteScan();
    scan.follow(line.text());
    return scan;
  }

  /** Whether the row goes on behind the line end, inside a quoted field. */
  boolean isOpen() {
    return state == State.QUOTED;
  }

  Optional<LineFault> fault() {
    return fault;
  }

  /** Whether the row is complete and has so many fields. */
  boolean isRowOf(int expectedFields) {
    return !isOpen() && fault.isEmpty() && fields == expectedFields;
  }

  void follow(String text) {
    for (int at = 0; at < text.length() && state != State.BROKEN; at++) {
      follow(text, at);
    }
  }

  private void follow(String text, int at) {
    char letter = text.charAt(at);
    switch (state) {
      case FIELD_START -> startField(letter);
      case BLANKS -> {
        if (letter == '"') {
          breakAt(new LineFault.BlankBeforeQuote(text.substring(at)));
        } else {
          startField(letter);
        }
      }
      case PLAIN -> {
        if (letter == ',') {
          nextField();
        }
      }
      case QUOTED -> {
        if (letter == '"') {
          state = State.QUOTE_IN_QUOTED;
        }
      }
      case QUOTE_IN_QUOTED -> {
        if (letter == '"') {
          state = State.QUOTED;
        } else if (letter == ',') {
          nextField();
        } else {
          breakAt(new LineFault.TextAfterQuote(text.substring(at)));
        }
      }
      case BROKEN -> {}
    }
  }

  private void startField(char letter) {
    if (letter == ',') {
      nextField();
    } else if (letter == '"') {
      state = State.QUOTED;
    } else {
      state = letter == ' ' || letter == '\t' ? State.BLANKS : State.PLAIN;
    }
  }

  private void nextField() {
    fields++;
    state = State.FIELD_START;
  }

  private void breakAt(LineFault found) {
    fault = Optional.of(found);
    state = State.BROKEN;
  }
}
