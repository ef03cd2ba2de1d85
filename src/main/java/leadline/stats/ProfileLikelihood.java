package leadline.stats;

import java.util.Optional;

/**
 * How the likelihood falls off with one quantity when the rest is fitted anew at each value of it,
 * and where it has fallen by a given amount.
 */
final class ProfileLikelihood {

  /** Direction of a limit from the estimate, on the chart's scale. */
  enum Side {
    BELOW(-1),
    ABOVE(1);

    private final int sign;

    Side(int sign) {
      this.sign = sign;
    }

    /** So that more is farther out on this side. */
    double signed(double coordinate) {
      return sign * coordinate;
    }
  }

  private record Point(double coordinate, double along, Chart.OnChart here) {}

  private static final int MOST_STEPS = 25;
  private static final int MOST_HALVINGS = 200;

  /** Of the way from the estimate: the step after one so small is lost in rounding. */
  private static final double LAST_STEP = 1e-6;

  private static final double NO_RISE = 1e-13;

  private final LikelihoodSurface surface;
  private final Chart chart;
  private final Point top;
  private final double standardError;
  private final double alongPerCoordinate;

  /**
   * @param peak at a shape where the chart's quantity is finite
   */
  ProfileLikelihood(LikelihoodSurface surface, Chart chart, Peak peak) {
    this.surface = surface;
    this.chart = chart;
    double coordinate = chart.coordinate(peak.shape(), peak.offset());
    double along = chart.along(peak.shape(), peak.offset());
    this.top =
        new Point(coordinate, along, Chart.on(chart.place(coordinate, along), peak.expansion()));
    Chart.OnChart here = top.here();
    this.alongPerCoordinate = -here.byBoth() / here.byAlongTwice();
    this.standardError =
        1 / Math.sqrt(-here.byCoordinateTwice() - here.byBoth() * alongPerCoordinate);
  }

  /** Of the quantity, on the chart's scale. */
  double estimate() {
    return top.coordinate();
  }

  /** By the observed information, on the chart's scale. */
  double standardError() {
    return standardError;
  }

  /**
   * Where the likelihood has fallen by a squared number of standard errors over 2, on the chart's
   * scale; infinite on the side where it never falls so far. The equations for the point,
   * likelihood at that height and slope 0 along, are solved by Newton's steps: Venzon and
   * Moolgavkar 1988, Appl. Statist. 37:87. Where these fail, by halving, the likelihood maximised
   * along each value.
   */
  double limit(Side side, double standardErrors) {
    double height = top.here().value() - standardErrors * standardErrors / 2;
    double away = side.sign * standardErrors * standardError;
    return solved(side, height, top.coordinate() + away, top.along() + away * alongPerCoordinate)
        .orElseGet(() -> halved(side, height));
  }

  /** The limit, or another point at that height with slope 0 along, by Newton's steps from one. */
  Optional<Double> solved(Side side, double height, double fromCoordinate, double fromAlong) {
    double coordinate = fromCoordinate;
    double along = fromAlong;
    for (int step = 0; step < MOST_STEPS; step++) {
      Chart.OnChart here = at(coordinate, along).here();
      double determinant =
          here.byCoordinate() * here.byAlongTwice() - here.byAlong() * here.byBoth();
      if (!here.isFinite() || !(here.byAlongTwice() < 0) || determinant == 0) {
        return Optional.empty();
      }
      double above = here.value() - height;
      double move = -(above * here.byAlongTwice() - here.byAlong() * here.byAlong()) / determinant;
      double moveAlong =
          -(here.byCoordinate() * here.byAlong() - here.byBoth() * above) / determinant;
      double farthestMove = Math.abs(coordinate - top.coordinate());
      double share = Math.min(1, farthestMove / Math.abs(move));
      coordinate += share * move;
      along += share * moveAlong;
      double way = coordinate - top.coordinate();
      if (!(way * side.sign > 0) || chart.isAtEnd(coordinate)) {
        return Optional.empty();
      }
      if (Math.abs(move) < LAST_STEP * Math.abs(way) && Math.abs(above) < 1e-3) {
        return Optional.of(coordinate);
      }
    }
    return Optional.empty();
  }

  private double halved(Side side, double height) {
    Point inside = top;
    double way = standardError;
    Point outside = highest(top.coordinate() + side.sign * way, inside.along());
    while (outside.here().value() >= height) {
      if (chart.isAtEnd(outside.coordinate())) {
        return side.sign * Double.POSITIVE_INFINITY;
      }
      inside = outside;
      way *= 1.5;
      outside = highest(top.coordinate() + side.sign * way, inside.along());
    }
    for (int halving = 0; halving < MOST_HALVINGS; halving++) {
      double middle = (inside.coordinate() + outside.coordinate()) / 2;
      if (middle == inside.coordinate() || middle == outside.coordinate()) {
        break;
      }
      Point between = highest(middle, inside.along());
      if (between.here().value() >= height) {
        inside = between;
      } else {
        outside = between;
      }
    }
    return inside.coordinate();
  }

  /** The likelihood maximised at one value of the quantity, by damped steps along it. */
  private Point highest(double coordinate, double start) {
    Point best = at(coordinate, start);
    for (int step = 0; step < MOST_HALVINGS; step++) {
      Chart.OnChart here = best.here();
      double newton = -here.byAlong() / here.byAlongTwice();
      double move =
          here.byAlongTwice() < 0 ? Math.max(-2, Math.min(2, newton)) : Math.signum(here.byAlong());
      if (!here.isFinite() || Math.abs(move * here.byAlong()) < NO_RISE) {
        return best;
      }
      Point next = at(coordinate, best.along() + move);
      while (!(next.here().value() > here.value()) && Math.abs(move) > 1e-12) {
        move /= 4;
        next = at(coordinate, best.along() + move);
      }
      if (!(next.here().value() > here.value())) {
        return best;
      }
      best = next;
    }
    return best;
  }

  private Point at(double coordinate, double along) {
    Chart.Place place = chart.place(coordinate, along);
    Chart.OnChart here = Chart.on(place, surface.at(place.shape(), place.offset()));
    return new Point(coordinate, along, here);
  }
}
