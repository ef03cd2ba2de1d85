package leadline.summary;

import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import leadline.stats.Confidence;
import leadline.stats.FittedLife;
import leadline.stats.KnownShapeFit;
import leadline.stats.LifeData;
import leadline.stats.LifeDistribution;
import leadline.stats.Limits;
import leadline.stats.OneSidedLimit;
import leadline.summary.LifeModel.AssumedShape;

/** The life distributions that lives support, with their figures and the limits of these. */
final class FittedLives {

  /** A lower limit alone is set with the chance that a two-sided one leaves below. */
  private static final Confidence ONE_SIDED = Confidence.of((1 + Evidence.CONFIDENCE.level()) / 2);

  private static final LifeModel EXPONENTIAL = new LifeModel.Free(LifeDistribution.EXPONENTIAL);

  /** Costly to fit or seldom asked for: vessels are not drawn for them. */
  private static final Set<LifeModel> FOR_COMPARISON =
      Set.of(
          new LifeModel.Free(LifeDistribution.GAMMA),
          new LifeModel.Free(LifeDistribution.LOG_LOGISTIC));

  static final LifeModel WEIBULL = new LifeModel.Free(LifeDistribution.WEIBULL);

  /**
   * A distribution with its figures.
   *
   * @param aic empty where nothing failed
   */
  record Fit(LifeModel model, OptionalDouble aic, List<HeadlineFigure> figures) {
    double aicOrZero() {
      return aic.orElse(0);
    }
  }

  private record Found(LifeModel model, FittedLife fit) {}

  private final LifeData data;
  private final long lives;
  private final Optional<LifeBootstrap> vessels;
  private final List<LifeFigure> figures;

  /**
   * @param figures to estimate in each distribution
   */
  FittedLives(RoutineLives lives, List<LifeFigure> figures) {
    this.data = lives.total().data();
    this.lives = lives.total().count(SeenLife::tellsAnything);
    this.vessels = LifeBootstrap.ofVessels(lives);
    this.figures = figures;
  }

  /**
   * Those with a free shape that have a highest likelihood, the best by AIC first; none if only the
   * exponential has. Vessels are drawn for the Weibull distribution, and for the best unless it
   * stands there for comparison only.
   */
  List<Fit> free() {
    List<Found> found =
        LifeModel.FREE.stream()
            .flatMap(model -> found(model).stream())
            .sorted(Comparator.comparingDouble(fit -> fit.fit().aic()))
            .toList();
    return found.stream().allMatch(fit -> fit.fit() instanceof KnownShapeFit)
        ? List.of()
        : found.stream()
            .map(fit -> isDrawn(fit, found.get(0)) ? fit(fit) : fit(fit, noneDrawn()))
            .toList();
  }

  private static boolean isDrawn(Found found, Found best) {
    return found.model().equals(WEIBULL)
        || (found.model().equals(best.model()) && !FOR_COMPARISON.contains(found.model()));
  }

  /**
   * The p value of a check whether the lives may come from the model; empty where they do not tell.
   */
  OptionalDouble fitCheck(LifeModel model) {
    return data.knownFromNew().isEmpty()
        ? OptionalDouble.empty()
        : model.chanceOfSuchDistance(data);
  }

  /** Weibull over assumed shapes; nothing where no life is known to have outlived any age. */
  List<Fit> assumed() {
    return LifeModel.ASSUMED.stream().flatMap(model -> assumed(model).stream()).toList();
  }

  /** Empty where the likelihood has no highest point. */
  Optional<Fit> with(LifeModel model) {
    return found(model).map(this::fit);
  }

  private Optional<Fit> assumed(AssumedShape model) {
    return with(model).or(() -> withoutFailure(model));
  }

  private Optional<Found> found(LifeModel model) {
    return model.fit(data).map(fit -> new Found(model, fit));
  }

  private Fit fit(Found found) {
    return fit(found, limitsByVessels(found.model()));
  }

  private Fit fit(Found found, List<Optional<Limits>> byVessels) {
    Confidence confidence = confidence(found.model());
    return new Fit(
        found.model(),
        OptionalDouble.of(found.fit().aic()),
        IntStream.range(0, figures.size())
            .mapToObj(
                index ->
                    assumedShape(figures.get(index), found.model())
                        .orElseGet(
                            () ->
                                HeadlineFigure.of(
                                    figures.get(index),
                                    found.fit(),
                                    confidence,
                                    byVessels.get(index))))
            .toList());
  }

  private static Optional<HeadlineFigure> assumedShape(LifeFigure figure, LifeModel model) {
    return figure.behaviour() == LifeFigure.Behaviour.GIVEN_BY_SHAPE
            && model instanceof AssumedShape assumed
        ? Optional.of(HeadlineFigure.assumed(figure, assumed))
        : Optional.empty();
  }

  /** Of profile-likelihood limits: higher where a shape too is fitted to few lives. */
  Confidence confidence(LifeModel model) {
    return model instanceof AssumedShape || model.equals(EXPONENTIAL)
        ? Evidence.CONFIDENCE
        : Evidence.CONFIDENCE.forSoFewLives((double) lives);
  }

  /** In the order of the figures, empty with too few vessels. */
  List<Optional<Limits>> limitsByVessels(LifeModel model) {
    return vessels
        .map(drawn -> drawn.limits(data -> values(model, data)))
        .orElseGet(this::noneDrawn);
  }

  private List<Optional<Limits>> noneDrawn() {
    return Collections.nCopies(figures.size(), Optional.empty());
  }

  private List<OptionalDouble> values(LifeModel model, LifeData data) {
    Optional<? extends FittedLife> fit = model.fit(data);
    return figures.stream()
        .map(
            figure ->
                fit.isPresent()
                    ? OptionalDouble.of(figure.value(fit.get()))
                    : OptionalDouble.empty())
        .toList();
  }

  private Optional<Fit> withoutFailure(AssumedShape model) {
    return model
        .oneSidedLimit(data, ONE_SIDED)
        .filter(OneSidedLimit.ScaleAtLeast.class::isInstance)
        .map(OneSidedLimit.ScaleAtLeast.class::cast)
        .map(
            limit ->
                new Fit(
                    model,
                    OptionalDouble.empty(),
                    figures.stream()
                        .map(figure -> HeadlineFigure.withoutFailure(figure, model, limit.scale()))
                        .toList()));
  }
}
