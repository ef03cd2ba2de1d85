package leadline.estimate;

import java.util.List;
import java.util.Set;
import leadline.stats.Confidence;
import leadline.stats.PoissonRate;
import leadline.stats.RateRatio;

/** Two rates compared exactly, for each row. */
final class RateRatioMethod implements Method {

  @Override
  public String word() {
    return "rate-ratio";
  }

  @Override
  public List<String> prints() {
    return List.of("ratio.");
  }

  @Override
  public String reads() {
    return "x1,t1,x2,t2";
  }

  @Override
  public EstimateResults of(DataFile file, EstimateSettings settings) {
    file.header().require(Set.of("x1", "t1", "x2", "t2"), Set.of());
    List<RateRatio> ratios = file.rows().stream().map(RateRatioMethod::ratio).toList();
    Confidence confidence = settings.confidence();
    return new EstimateResults()
        .numbers("ratio.ratio", ratios, ratio -> ratio.ratio().orElse(Double.NaN))
        .numbers("ratio.lo", ratios, ratio -> ratio.limits(confidence).lower())
        .numbers("ratio.hi", ratios, ratio -> ratio.limits(confidence).upper())
        .numbers("ratio.p_central", ratios, RateRatio::pCentral)
        .numbers("ratio.p_mid", ratios, RateRatio::pMid)
        .numbers("ratio.p_minlike", ratios, RateRatio::pMinimumLikelihood)
        .numbers("ratio.p_less", ratios, RateRatio::pLess)
        .numbers("ratio.p_greater", ratios, RateRatio::pGreater);
  }

  private static RateRatio ratio(DataRow row) {
    long first = row.count("x1");
    long second = row.count("x2");
    if (first > Integer.MAX_VALUE - second) {
      throw row.impossible("x1", "too many events to compare");
    }
    return new RateRatio(
        new PoissonRate(first, row.positive("t1")), new PoissonRate(second, row.positive("t2")));
  }
}
