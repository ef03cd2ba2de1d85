package leadline.stats;

/**
 * Of a family in which log age has a location and a scale.
 *
 * @param centre the logarithm of age from which the offset counts
 */
record LocationScaleCharts(StandardForm form, double centre) implements Charts {

  @Override
  public Chart scale() {
    return AgeChart.where(0, centre);
  }

  @Override
  public Chart quantile(double share) {
    return AgeChart.where(form.quantile(share), centre);
  }

  @Override
  public Chart mean() {
    return new AgeChart(form::logMean, form.leastShapeWithMean(), centre);
  }

  @Override
  public Chart survivalAt(double age) {
    return new SurvivalChart(form, Math.log(age) - centre);
  }

  @Override
  public Chart failureWithin(double hours, double age) {
    return new FailureChart(form, Math.log(age) - centre, Math.log1p(hours / age));
  }
}
