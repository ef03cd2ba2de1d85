package leadline.cli;

import java.io.PrintWriter;

/** Where results go ({@code out}), and all else ({@code err}). */
record Console(PrintWriter out, PrintWriter err) {

  /** A word to the person at the terminal; a scheduler's log stays empty. */
  void tell(String words) {
    if (System.console() != null) {
      err.println(words);
      err.flush();
    }
  }

  void warn(String words) {
    err.println(words);
    err.flush();
  }
}
