package leadline.stats;

/**
 * The logarithm of an age that is exp(mu) times a function of the shape, and along it the logarithm
 * of the shape, as far as that exceeds the least at which the age is finite.
 */
record AgeChart(LogAge logAge, double leastShape, double centre) implements Chart {

  /** The logarithm of the age at mu = 0, and its derivatives by shape. */
  interface LogAge {
    void at(double shape, Jet jet);
  }

  private record Quantile(double z) implements LogAge {
    @Override
    public void at(double shape, Jet jet) {
      jet.set(z / shape, -z / (shape * shape), 2 * z / (shape * shape * shape));
    }
  }

  /** The age at which (log age - mu) / sigma is a given number. */
  static AgeChart where(double z, double centre) {
    return new AgeChart(new Quantile(z), 0, centre);
  }

  @Override
  public Place place(double coordinate, double along) {
    double excess = Math.exp(along);
    double shape = leastShape + excess;
    Jet jet = new Jet();
    logAge.at(shape, jet);
    double above = jet.value - coordinate;
    double byShape = above + shape * jet.first;
    double byShapeTwice = 2 * jet.first + shape * jet.second;
    return new Place(
        shape,
        shape * above,
        new Slopes(0, excess, 0, excess),
        new Slopes(
            -shape, byShape * excess, -excess, byShapeTwice * excess * excess + byShape * excess));
  }

  @Override
  public double coordinate(double shape, double offset) {
    Jet jet = new Jet();
    logAge.at(shape, jet);
    return jet.value - offset / shape;
  }

  @Override
  public double along(double shape, double offset) {
    return Math.log(shape - leastShape);
  }

  @Override
  public double quantity(double coordinate) {
    return Math.exp(coordinate + centre);
  }

  @Override
  public boolean isStraight() {
    return logAge instanceof Quantile;
  }

  @Override
  public boolean isFiniteAt(double shape) {
    return shape > leastShape;
  }
}
