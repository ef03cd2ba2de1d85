package leadline.stats;

/**
 * Other coordinates of the plane of shape and offset: the quantity asked for, on a scale without
 * ends, and a second one that runs along the points where it is the same.
 */
interface Chart {

  /** Beyond, no number has a logarithm. */
  double FARTHEST = 700;

  /** Where a pair of coordinates lies. */
  Place place(double coordinate, double along);

  /** The quantity on its scale without ends. */
  double coordinate(double shape, double offset);

  double along(double shape, double offset);

  /** From the scale without ends to that of the quantity; monotone. */
  double quantity(double coordinate);

  /** Whether the quantity is at an end of its own, on the scale without ends. */
  default boolean isAtEnd(double coordinate) {
    return Math.abs(coordinate) > FARTHEST;
  }

  /** Whether the quantity is finite at a shape. */
  default boolean isFiniteAt(double shape) {
    return shape > 0;
  }

  /**
   * Whether the points with one value of the quantity lie on a straight line of the plane. A
   * concave likelihood has one peak on such a line, and may have several on a curve.
   */
  boolean isStraight();

  /** A point and the derivatives of shape and offset by both coordinates. */
  record Place(double shape, double offset, Slopes ofShape, Slopes ofOffset) {}

  /** First derivatives, the mixed one, and the second one along. */
  record Slopes(double byCoordinate, double byAlong, double byBoth, double byAlongTwice) {

    static final Slopes NONE = new Slopes(0, 0, 0, 0);
  }

  /** A function of the plane by this chart's coordinates. */
  static OnChart on(Place place, Expansion plane) {
    Slopes shape = place.ofShape();
    Slopes offset = place.ofOffset();
    return new OnChart(
        plane.value(),
        plane.byShape() * shape.byCoordinate() + plane.byOffset() * offset.byCoordinate(),
        plane.byShape() * shape.byAlong() + plane.byOffset() * offset.byAlong(),
        plane.byShapeTwice() * shape.byCoordinate() * shape.byCoordinate()
            + 2 * plane.byBoth() * shape.byCoordinate() * offset.byCoordinate()
            + plane.byOffsetTwice() * offset.byCoordinate() * offset.byCoordinate(),
        plane.byShapeTwice() * shape.byCoordinate() * shape.byAlong()
            + plane.byBoth()
                * (shape.byCoordinate() * offset.byAlong()
                    + shape.byAlong() * offset.byCoordinate())
            + plane.byOffsetTwice() * offset.byCoordinate() * offset.byAlong()
            + plane.byShape() * shape.byBoth()
            + plane.byOffset() * offset.byBoth(),
        plane.byShapeTwice() * shape.byAlong() * shape.byAlong()
            + 2 * plane.byBoth() * shape.byAlong() * offset.byAlong()
            + plane.byOffsetTwice() * offset.byAlong() * offset.byAlong()
            + plane.byShape() * shape.byAlongTwice()
            + plane.byOffset() * offset.byAlongTwice());
  }

  /**
   * Value and derivatives by this chart's coordinates.
   *
   * @param byCoordinateTwice true only where the gradient is 0
   */
  record OnChart(
      double value,
      double byCoordinate,
      double byAlong,
      double byCoordinateTwice,
      double byBoth,
      double byAlongTwice) {

    boolean isFinite() {
      return Double.isFinite(value)
          && Double.isFinite(byCoordinate)
          && Double.isFinite(byAlong)
          && Double.isFinite(byBoth)
          && Double.isFinite(byAlongTwice);
    }
  }
}
