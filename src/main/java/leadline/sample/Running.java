package leadline.sample;

/**
 * How much a kind of machine runs: hours a year, drawn anew for each year from a normal
 * distribution and held within what is plausible (common practice, no source).
 */
enum Running {
  MAIN_ENGINE(5600, 700, 4300, 7000),
  GENERATOR(4000, 700, 2500, 6000),
  COMPRESSOR(1000, 350, 300, 2000);

  private final double mean;
  private final double deviation;
  private final double least;
  private final double most;

  Running(double mean, double deviation, double least, double most) {
    this.mean = mean;
    this.deviation = deviation;
    this.least = least;
    this.most = most;
  }

  double hoursInAYear(Draw draw) {
    return Math.min(most, Math.max(least, draw.normal(mean, deviation)));
  }
}
