package leadline.estimate;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import leadline.stats.Confidence;
import leadline.stats.FitOutcome;
import leadline.stats.FitOutcome.NoFiniteMaximum;
import leadline.stats.KnownShapeFit;
import leadline.stats.Life;
import leadline.stats.LifeData;
import leadline.stats.LifeFamily;
import leadline.stats.LifeFit;

/**
 * Life distributions by maximum likelihood. A usual family that was not asked for is still named
 * where the data have no maximum for it.
 */
final class FitMethod implements Method {

  private static final Set<FitFamily> USUAL_FAMILIES =
      EnumSet.of(FitFamily.EXPONENTIAL, FitFamily.WEIBULL, FitFamily.LOGNORMAL);
  private static final List<Double> USUAL_SHAPES = List.of(1.5, 2.0, 3.0);

  @Override
  public String word() {
    return "fit";
  }

  @Override
  public List<String> prints() {
    return List.of(
        "exponential.", "weibull.", "lognormal.", "log_logistic.", "weibull_fixed_shape_");
  }

  @Override
  public String reads() {
    return "lower,upper,entry,weight[,group]";
  }

  @Override
  public EstimateResults of(DataFile file, EstimateSettings settings) {
    LifeData data = data(file);
    EstimateResults results = new EstimateResults();
    Set<FitFamily> chosen = chosen(settings);
    for (FitFamily family : FitFamily.values()) {
      if (chosen.contains(family)) {
        results.addAll(family.word() + ".", results(family, data, settings));
      } else if (USUAL_FAMILIES.contains(family)) {
        results.addAll(family.word() + ".", reasonAgainst(family, data, settings.confidence()));
      }
    }
    for (double shape : shapes(settings)) {
      results.addAll(
          "weibull_fixed_shape_" + shape + ".",
          KnownShapeResults.ofScale(KnownShapeFit.of(shape, data), settings.confidence()));
    }
    return results;
  }

  private static EstimateResults results(
      FitFamily family, LifeData data, EstimateSettings settings) {
    return switch (family) {
      case EXPONENTIAL ->
          KnownShapeResults.ofMean(KnownShapeFit.of(1, data), settings.confidence());
      case WEIBULL -> LifeFitResults.of(LifeFit.of(LifeFamily.WEIBULL, data), settings);
      case LOGNORMAL -> LifeFitResults.of(LifeFit.of(LifeFamily.LOGNORMAL, data), settings);
      case LOG_LOGISTIC -> LifeFitResults.of(LifeFit.of(LifeFamily.LOG_LOGISTIC, data), settings);
    };
  }

  private static EstimateResults reasonAgainst(
      FitFamily family, LifeData data, Confidence confidence) {
    FitOutcome<?> outcome =
        switch (family) {
          case EXPONENTIAL -> KnownShapeFit.of(1, data);
          case WEIBULL -> LifeFit.of(LifeFamily.WEIBULL, data);
          case LOGNORMAL -> LifeFit.of(LifeFamily.LOGNORMAL, data);
          case LOG_LOGISTIC -> LifeFit.of(LifeFamily.LOG_LOGISTIC, data);
        };
    return outcome instanceof NoFiniteMaximum<?> none
        ? NoMaximumResults.of(none, confidence)
        : new EstimateResults();
  }

  private static LifeData data(DataFile file) {
    LifeData.Builder builder = new LifeData.Builder();
    LifeRow.of(file).forEach(row -> builder.add(life(row), row.weight()));
    return builder.build();
  }

  private static Life life(LifeRow row) {
    if (row.upper() == 0) {
      throw row.row().impossible("upper", "no life distribution has an end at age 0");
    }
    Life life =
        row.isRightCensored()
            ? Life.outlived(row.lower())
            : row.isExact()
                ? Life.failedAt(row.lower())
                : Life.failedBetween(row.lower(), row.upper());
    return row.entry().isPresent() ? life.enteredAt(row.entry().getAsDouble()) : life;
  }

  private static Set<FitFamily> chosen(EstimateSettings settings) {
    Optional<List<String>> words = settings.words(Setting.FAMILIES);
    if (words.isEmpty()) {
      return USUAL_FAMILIES;
    }
    Set<FitFamily> chosen = EnumSet.noneOf(FitFamily.class);
    for (String word : words.get()) {
      chosen.add(
          FitFamily.of(word)
              .orElseThrow(
                  () ->
                      settings.unusable(
                          Setting.FAMILIES,
                          "there is no %s; there are %s".formatted(word, FitFamily.words()))));
    }
    return chosen;
  }

  private static List<Double> shapes(EstimateSettings settings) {
    List<Double> shapes = settings.numbers(Setting.FIXED_SHAPES).orElse(USUAL_SHAPES);
    if (shapes.stream().anyMatch(shape -> !(shape > 0))) {
      throw settings.unusable(Setting.FIXED_SHAPES, "must be more than 0");
    }
    return shapes.stream().distinct().toList();
  }
}
