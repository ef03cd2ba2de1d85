package leadline.stats;

/** Where the quantities of a life lie in the plane of a family's shape and offset. */
interface Charts {

  default Chart shape() {
    return new ShapeChart(ShapeChart.Power.SHAPE);
  }

  default Chart sigma() {
    return new ShapeChart(ShapeChart.Power.SIGMA);
  }

  Chart scale();

  /** The age by which a share has ended, more than 0 and less than 1. */
  Chart quantile(double share);

  Chart mean();

  Chart survivalAt(double age);

  Chart failureWithin(double hours, double age);
}
