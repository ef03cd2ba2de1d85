package leadline.estimate;

import java.util.List;
import java.util.Set;
import leadline.stats.FitOutcome;
import leadline.stats.FitOutcome.NoFiniteMaximum;
import leadline.stats.FittedLife;
import leadline.stats.KnownShapeFit;
import leadline.stats.LifeData;
import leadline.stats.LifeDistribution;

/**
 * Life distributions by maximum likelihood. A usual family that was not asked for is still named
 * where the data have no maximum for it.
 */
final class FitMethod implements Method {

  private static final List<Double> USUAL_SHAPES = List.of(1.5, 2.0, 3.0);

  @Override
  public String word() {
    return "fit";
  }

  @Override
  public List<String> prints() {
    return List.of(
        "exponential.",
        "weibull.",
        "lognormal.",
        "gamma.",
        "log_logistic.",
        "weibull_fixed_shape_");
  }

  @Override
  public String reads() {
    return "lower,upper,entry,weight[,group]";
  }

  @Override
  public EstimateResults of(DataFile file, EstimateSettings settings) {
    LifeData data = LifeRow.lives(file);
    EstimateResults results = new EstimateResults();
    Set<LifeDistribution> chosen = FitFamilies.of(settings);
    for (LifeDistribution family : LifeDistribution.values()) {
      if (chosen.contains(family) || FitFamilies.USUAL.contains(family)) {
        FitOutcome<? extends FittedLife> outcome = family.fit(data);
        if (outcome instanceof NoFiniteMaximum<?> none) {
          results.addAll(
              FitFamilies.word(family) + ".",
              NoMaximumResults.of(none, FitFamilies.scale(family), settings.confidence()));
        } else if (chosen.contains(family)) {
          results.addAll(
              FitFamilies.word(family) + ".", results(outcome.fit().orElseThrow(), settings));
        }
      }
    }
    for (double shape : shapes(settings)) {
      results.addAll(
          "weibull_fixed_shape_" + shape + ".",
          KnownShapeResults.ofScale(KnownShapeFit.of(shape, data), settings.confidence()));
    }
    return results;
  }

  private static EstimateResults results(FittedLife fit, EstimateSettings settings) {
    return fit instanceof KnownShapeFit exponential
        ? KnownShapeResults.ofMean(exponential, settings.confidence())
        : LifeFitResults.of(fit, settings);
  }

  private static List<Double> shapes(EstimateSettings settings) {
    List<Double> shapes = settings.numbers(Setting.FIXED_SHAPES).orElse(USUAL_SHAPES);
    if (shapes.stream().anyMatch(shape -> !(shape > 0))) {
      throw settings.unusable(Setting.FIXED_SHAPES, "must be more than 0");
    }
    return shapes.stream().distinct().toList();
  }
}
