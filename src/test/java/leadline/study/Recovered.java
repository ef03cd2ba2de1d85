package leadline.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import leadline.summary.SpringLives.Figure;

/** How a figure came out of many fleets, beside the truth. */
final class Recovered {

  private final double truth;
  private final List<Double> estimates = new ArrayList<>();
  private Coverage profile = Coverage.OF_NOTHING;
  private Coverage vessels = Coverage.OF_NOTHING;
  private Coverage published = Coverage.OF_NOTHING;

  Recovered(double truth) {
    this.truth = truth;
  }

  void add(Figure figure) {
    estimates.add(figure.value());
    profile = profile.plus(Coverage.of(Optional.of(figure.profile()), truth));
    vessels = vessels.plus(Coverage.of(figure.vessels(), truth));
    published = published.plus(Coverage.of(Optional.of(figure.published()), truth));
  }

  double medianEstimate() {
    List<Double> sorted = estimates.stream().sorted().toList();
    return sorted.get(sorted.size() / 2);
  }

  Coverage published() {
    return published;
  }

  @Override
  public String toString() {
    return String.format(
        Locale.ROOT,
        "%.4g | %.4g | %.1f | %.1f | %.1f | %.1f",
        truth,
        medianEstimate(),
        profile.share(),
        vessels.share(),
        published.share(),
        vessels.shareWithout());
  }
}
