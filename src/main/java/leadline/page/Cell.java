package leadline.page;

/** A cell of a table on a page: what is read, and what a copy as CSV holds. */
public sealed interface Cell {

  record Words(String text) implements Cell {

    private static final int LONG = 36;

    /** The class of the style sheet: long texts may be broken anywhere. */
    public String style() {
      return text.length() > LONG ? "long" : "words";
    }
  }

  /**
   * A number by itself.
   *
   * @param exact as in the published CSV
   */
  record Figure(String text, String exact) implements Cell {}

  /**
   * An estimate with its limits.
   *
   * @param figure as it is read
   * @param limits as they are read, in brackets
   * @param lower empty where there is none, like {@code upper}
   */
  record Estimate(String figure, String limits, String exact, String lower, String upper)
      implements Cell {
    String text() {
      return figure + " " + limits;
    }
  }

  /**
   * Words that lead to another page.
   *
   * @param to from this page's folder
   */
  record Link(String text, String to) implements Cell {}

  /** The data do not support a value. */
  record None() implements Cell {}
}
