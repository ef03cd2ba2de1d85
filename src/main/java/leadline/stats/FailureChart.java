package leadline.stats;

/**
 * The logarithm of the cumulative hazard between two ages, and along it the z of the first age.
 *
 * @param logAge of the first age
 * @param logRatio of the second age to the first, more than 0
 */
record FailureChart(StandardForm form, double logAge, double logRatio) implements Chart {

  @Override
  public Place place(double coordinate, double along) {
    Jet first = new Jet();
    Jet second = new Jet();
    double hazard = Math.exp(coordinate);
    form.logSurvival(along, first);
    double later = form.atLogSurvival(first.value - hazard);
    form.logSurvival(later, second);
    double byCoordinate = -hazard / second.first;
    double byAlong = first.first / second.first;
    double byBoth = -byCoordinate * second.second * byAlong / second.first;
    double byAlongTwice = (first.second - second.second * byAlong * byAlong) / second.first;
    Slopes ofShape =
        new Slopes(
            byCoordinate / logRatio,
            (byAlong - 1) / logRatio,
            byBoth / logRatio,
            byAlongTwice / logRatio);
    double shape = (later - along) / logRatio;
    return new Place(
        shape,
        along - shape * logAge,
        ofShape,
        new Slopes(
            -ofShape.byCoordinate() * logAge,
            1 - ofShape.byAlong() * logAge,
            -ofShape.byBoth() * logAge,
            -ofShape.byAlongTwice() * logAge));
  }

  @Override
  public double coordinate(double shape, double offset) {
    Jet first = new Jet();
    Jet second = new Jet();
    double z = along(shape, offset);
    form.logSurvival(z, first);
    form.logSurvival(z + shape * logRatio, second);
    return first.value == Double.NEGATIVE_INFINITY
        ? Double.POSITIVE_INFINITY
        : Math.log(first.value - second.value);
  }

  @Override
  public double along(double shape, double offset) {
    return shape * logAge + offset;
  }

  @Override
  public double quantity(double coordinate) {
    return -Math.expm1(-Math.exp(coordinate));
  }

  @Override
  public boolean isStraight() {
    return false;
  }
}
