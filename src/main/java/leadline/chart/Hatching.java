package leadline.chart;

/** Slanting lines over a box. */
record Hatching(double left, double top, double right, double bottom) {

  private static final double APART = 7;

  /** The lines as one path; empty where the box has no width. */
  String path() {
    StringBuilder path = new StringBuilder();
    double height = bottom - top;
    for (double start = left - height + APART; start < right; start += APART) {
      double x1 = Math.max(start, left);
      double x2 = Math.min(start + height, right);
      path.append(
          "M%s %sL%s %s"
              .formatted(
                  Pen.at(x1),
                  Pen.at(bottom - (x1 - start)),
                  Pen.at(x2),
                  Pen.at(bottom - (x2 - start))));
    }
    return path.toString();
  }
}
