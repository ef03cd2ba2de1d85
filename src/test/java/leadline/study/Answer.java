package leadline.study;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import leadline.stats.Confidence;
import leadline.stats.KaplanMeier;
import leadline.stats.KnownShapeFit;
import leadline.stats.Life;
import leadline.stats.LifeData;
import leadline.stats.LifeFamily;
import leadline.stats.LifeFit;
import leadline.stats.LifeQuantity;
import leadline.stats.Limits;
import leadline.stats.ObservedTime;
import leadline.stats.RestrictedMean;
import leadline.stats.SurvivalPoint;
import leadline.stats.SurvivalTally;

/**
 * Limits that a method set, and the truth that they are about.
 *
 * @param limits empty where the data support none
 */
record Answer(String method, Optional<Limits> limits, double truth) {

  static final Confidence CONFIDENCE = Confidence.of(0.95);

  /** The stated age, in hours: half as old again as those followed to 8,000 hours. */
  static final double AGE = 12_000;

  /** To which all curves reach, in hours. */
  static final double HORIZON = 8000;

  private record Asked(String name, LifeQuantity quantity, ToDoubleFunction<Design> truth) {}

  private static final List<Asked> ASKED =
      List.of(
          new Asked("shape", LifeQuantity.shape(), Design::shape),
          new Asked("scale", LifeQuantity.scale(), Design::scale),
          new Asked("B10", LifeQuantity.quantile(0.1), design -> design.quantile(0.1)),
          new Asked(
              "survival at 12,000 h",
              LifeQuantity.survivalAt(AGE),
              design -> design.survivalAt(AGE)));

  /** Every method that such lives allow. */
  static Stream<Answer> all(Design design, List<Life> lives) {
    LifeData data = LifeData.of(lives);
    Stream<Answer> parametric = Stream.concat(weibull(design, data), knownShape(design, data));
    return design.watch().seesEnds()
        ? Stream.concat(parametric, seenEnds(design, data, lives))
        : parametric;
  }

  private static Stream<Answer> weibull(Design design, LifeData data) {
    Optional<LifeFit> fit = LifeFit.of(LifeFamily.WEIBULL, data).fit();
    return ASKED.stream()
        .flatMap(
            asked ->
                Stream.of(
                    new Answer(
                        "profile " + asked.name(),
                        fit.map(found -> found.profileLimits(asked.quantity(), CONFIDENCE)),
                        asked.truth().applyAsDouble(design)),
                    new Answer(
                        "widened profile " + asked.name(),
                        fit.map(
                            found ->
                                found.profileLimits(
                                    asked.quantity(), CONFIDENCE.forSoFewLives(design.lives()))),
                        asked.truth().applyAsDouble(design)),
                    new Answer(
                        "Wald " + asked.name(),
                        fit.map(found -> found.waldLimits(asked.quantity(), CONFIDENCE)),
                        asked.truth().applyAsDouble(design))));
  }

  private static Stream<Answer> knownShape(Design design, LifeData data) {
    Optional<KnownShapeFit> fit = KnownShapeFit.of(design.shape(), data).fit();
    return Stream.of(
        new Answer(
            "shape known: profile",
            fit.map(found -> found.profileLimits(LifeQuantity.scale(), CONFIDENCE)),
            design.scale()),
        new Answer(
            "shape known: Wald",
            fit.map(found -> found.waldLimits(LifeQuantity.scale(), CONFIDENCE)),
            design.scale()));
  }

  private static Stream<Answer> seenEnds(Design design, LifeData data, List<Life> lives) {
    SurvivalTally<String> tally = new SurvivalTally<>();
    for (Life life : lives) {
      tally.add(
          life instanceof Life.Outlived
              ? ObservedTime.censored(life.lower())
              : ObservedTime.ended(life.lower(), "failed"),
          1);
    }
    KaplanMeier curve = KaplanMeier.of(tally);
    Optional<SurvivalPoint> last =
        curve.points().stream()
            .filter(point -> point.time() <= HORIZON && curve.survivalAt(HORIZON).isPresent())
            .reduce((before, after) -> after);
    Optional<RestrictedMean> mean = curve.restrictedMean(HORIZON);
    return Stream.of(
        new Answer(
            "shape known: chi-squared",
            KnownShapeFit.of(design.shape(), data)
                .fit()
                .flatMap(found -> found.exactLimits(CONFIDENCE)),
            design.scale()),
        new Answer(
            "Kaplan-Meier, log(-log)",
            last.flatMap(point -> point.logLogLimits(CONFIDENCE)),
            design.survivalAt(HORIZON)),
        new Answer(
            "Kaplan-Meier, plain",
            last.flatMap(point -> point.plainLimits(CONFIDENCE)),
            design.survivalAt(HORIZON)),
        new Answer(
            "restricted mean, normal",
            mean.map(found -> found.limits(CONFIDENCE)),
            design.restrictedMean(HORIZON)),
        new Answer(
            "restricted mean, logit",
            mean.flatMap(found -> found.logitLimits(CONFIDENCE)),
            design.restrictedMean(HORIZON)));
  }
}
