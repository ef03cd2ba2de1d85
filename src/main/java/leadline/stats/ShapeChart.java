package leadline.stats;

/** The logarithm of the shape, and the offset along. */
record ShapeChart(Power power) implements Chart {

  /** Which power of the shape is the quantity. */
  enum Power {
    SHAPE(1),
    SIGMA(-1);

    private final int exponent;

    Power(int exponent) {
      this.exponent = exponent;
    }
  }

  @Override
  public Place place(double coordinate, double along) {
    double shape = Math.exp(coordinate);
    return new Place(shape, along, new Slopes(shape, 0, 0, 0), new Slopes(0, 1, 0, 0));
  }

  @Override
  public double coordinate(double shape, double offset) {
    return Math.log(shape);
  }

  @Override
  public double along(double shape, double offset) {
    return offset;
  }

  @Override
  public double quantity(double coordinate) {
    return Math.exp(power.exponent * coordinate);
  }

  /**
   * A shape of ten million million is as good as infinite, for ages have fewer digits; at one of a
   * ten millionth, all ages are alike.
   */
  @Override
  public boolean isAtEnd(double coordinate) {
    return coordinate > 30 || coordinate < -16;
  }

  @Override
  public boolean isStraight() {
    return true;
  }
}
