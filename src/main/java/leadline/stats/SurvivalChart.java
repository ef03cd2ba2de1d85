package leadline.stats;

/** The z of one age, and along it the logarithm of the shape. */
record SurvivalChart(StandardForm form, double logAge) implements Chart {

  @Override
  public Place place(double coordinate, double along) {
    double shape = Math.exp(along);
    double turn = -shape * logAge;
    return new Place(
        shape, coordinate + turn, new Slopes(0, shape, 0, shape), new Slopes(1, turn, 0, turn));
  }

  @Override
  public double coordinate(double shape, double offset) {
    return shape * logAge + offset;
  }

  @Override
  public double along(double shape, double offset) {
    return Math.log(shape);
  }

  @Override
  public double quantity(double coordinate) {
    Jet jet = new Jet();
    form.logSurvival(coordinate, jet);
    return Math.exp(jet.value);
  }

  @Override
  public boolean isStraight() {
    return true;
  }
}
