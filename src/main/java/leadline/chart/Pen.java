package leadline.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Collects marks. Coordinates are in pixels, down and to the right. */
final class Pen {

  private final List<Mark> marks = new ArrayList<>();

  List<Mark> marks() {
    return marks;
  }

  void line(String style, double x1, double y1, double x2, double y2, String title) {
    path(style, "M%s %sL%s %s".formatted(at(x1), at(y1), at(x2), at(y2)), title);
  }

  void box(String style, double left, double top, double right, double bottom, String title) {
    path(
        style,
        "M%s %sH%sV%sH%sZ".formatted(at(left), at(top), at(right), at(bottom), at(left)),
        title);
  }

  void diamond(String style, double x, double y, double reach, String title) {
    path(
        style,
        "M%s %sL%s %sL%s %sL%s %sZ"
            .formatted(
                at(x - reach),
                at(y),
                at(x),
                at(y - reach),
                at(x + reach),
                at(y),
                at(x),
                at(y + reach)),
        title);
  }

  void path(String style, String path, String title) {
    marks.add(new Mark.Stroke(style, path, title));
  }

  void words(String style, double x, double y, String anchor, String text) {
    words(style, x, y, anchor, text, "");
  }

  void words(String style, double x, double y, String anchor, String text, String title) {
    marks.add(new Mark.Words(style, at(x), at(y), anchor, text, title));
  }

  /** To tenths of a pixel. */
  static String at(double pixels) {
    String tenths = String.format(Locale.ROOT, "%.1f", pixels);
    return tenths.endsWith(".0") ? tenths.substring(0, tenths.length() - 2) : tenths;
  }
}
