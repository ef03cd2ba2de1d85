package leadline.stats;

import java.util.function.DoubleUnaryOperator;

/**
 * A quantity given as a function of the plane that always grows, or always falls, with the offset,
 * and along it the logarithm of the shape.
 *
 * @param toQuantity from the scale without ends to that of the quantity
 */
record LevelChart(Level level, DoubleUnaryOperator toQuantity) implements Chart {

  /** The quantity on its scale without ends; its slope by the offset never changes its bend. */
  interface Level {
    void at(double shape, double offset, PlaneJet jet);
  }

  private static final int MOST_STEPS = 60;

  @Override
  public Place place(double coordinate, double along) {
    double shape = Math.exp(along);
    PlaneJet jet = new PlaneJet();
    double offset = offset(shape, coordinate, jet);
    double byShape = -jet.byShape / jet.byOffset;
    double byShapeTwice =
        -(jet.byShapeTwice + byShape * (2 * jet.byBoth + byShape * jet.byOffsetTwice))
            / jet.byOffset;
    return new Place(
        shape,
        offset,
        new Slopes(0, shape, 0, shape),
        new Slopes(
            1 / jet.byOffset,
            byShape * shape,
            -(jet.byBoth + jet.byOffsetTwice * byShape) * shape / (jet.byOffset * jet.byOffset),
            (byShapeTwice * shape + byShape) * shape));
  }

  /** By Newton's steps, which a slope without a change of bend lets overshoot once at most. */
  private double offset(double shape, double coordinate, PlaneJet jet) {
    double offset = 0;
    for (int step = 0; step < MOST_STEPS; step++) {
      level.at(shape, offset, jet);
      double move = (coordinate - jet.value) / jet.byOffset;
      offset += move;
      if (Math.abs(move) < 1e-14 * (1 + Math.abs(offset))) {
        break;
      }
    }
    level.at(shape, offset, jet);
    return offset;
  }

  @Override
  public double coordinate(double shape, double offset) {
    PlaneJet jet = new PlaneJet();
    level.at(shape, offset, jet);
    return jet.value;
  }

  @Override
  public double along(double shape, double offset) {
    return Math.log(shape);
  }

  @Override
  public double quantity(double coordinate) {
    return toQuantity.applyAsDouble(coordinate);
  }

  @Override
  public boolean isStraight() {
    return false;
  }
}
