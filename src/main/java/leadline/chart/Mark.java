package leadline.chart;

/**
 * Something drawn.
 *
 * <p>The {@code style} is a class of the style sheet; an empty {@code title} is none.
 */
public sealed interface Mark {

  /**
   * A line, an area or a point.
   *
   * @param path in the path language of SVG
   */
  record Stroke(String style, String path, String title) implements Mark {}

  /**
   * Words at a point of their base line.
   *
   * @param anchor {@code start}, {@code middle} or {@code end}: the end of the words that lies
   *     there
   */
  record Words(String style, String x, String y, String anchor, String text, String title)
      implements Mark {}
}
