package leadline.page;

import java.util.List;

/** A text of headings, sentences and tables. What it is given may hold any characters. */
interface MailText {

  void title(String text);

  void heading(String text);

  void sentence(String text);

  void point(String text);

  /** That belongs to the point before. */
  void pointBelow(String text);

  /**
   * A table.
   *
   * @param rows of as many cells as there are heads, the first a name, the others short
   */
  void table(List<String> heads, List<List<String>> rows);

  /** Of one line: no breaks, no marks that turn the direction of what follows. */
  static String inLine(String text) {
    return text.replaceAll("[\\u200E\\u200F\\u202A-\\u202E\\u2066-\\u2069]", "")
        .replaceAll("[\\p{Cntrl}\\u2028\\u2029\\u00A0]", " ");
  }
}
