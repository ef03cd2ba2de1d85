package leadline.cli;

import java.io.PrintWriter;

/** Where results go ({@code out}), all else ({@code err}), and who reads the latter. */
record Console(PrintWriter out, PrintWriter err, Reader reader) {

  /** Who reads what is not a result. */
  enum Reader {
    PERSON,
    SCHEDULER
  }

  /** A word of progress to the person at the terminal; a scheduler's log stays empty. */
  void tell(String words) {
    if (reader == Reader.PERSON) {
      warn(words);
    }
  }

  void warn(String words) {
    err.println(words);
    err.flush();
  }
}
