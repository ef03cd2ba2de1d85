package leadline.problem;

import java.util.List;

/** A cell with a word that the column does not know. */
public sealed interface NameFault extends RowFault {

  /** The offending text. */
  String text();

  /** What the column may hold. */
  List<String> allowed();

  /** What the words of the column are, such as {@code one of its words}. */
  String expected();

  @Override
  default String sentence() {
    return column()
        + " "
        + Excerpt.of(text())
        + " is not "
        + expected()
        + ": write exactly one of "
        + String.join(", ", allowed())
        + ".";
  }

  /** Not a word of the closed set. */
  record UnknownWord(String column, String text, List<String> allowed) implements NameFault {
    @Override
    public String expected() {
      return "a word of this column";
    }
  }

  /** Not a component of the catalogue. */
  record UnknownComponent(String column, String text, List<String> allowed) implements NameFault {
    @Override
    public String expected() {
      return "a component of the catalogue";
    }
  }

  /** Not a part of any component of the catalogue. */
  record UnknownPart(String column, String text, List<String> allowed) implements NameFault {
    @Override
    public String expected() {
      return "a part of the catalogue";
    }
  }
}
