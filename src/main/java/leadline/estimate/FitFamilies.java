package leadline.estimate;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import leadline.stats.LifeDistribution;

/** The words by which a user asks for distributions; each begins the names of its results. */
final class FitFamilies {

  /** Where the user asks for none. */
  static final Set<LifeDistribution> USUAL =
      EnumSet.of(
          LifeDistribution.EXPONENTIAL, LifeDistribution.WEIBULL, LifeDistribution.LOGNORMAL);

  private FitFamilies() {}

  static String word(LifeDistribution family) {
    return family.name().toLowerCase(Locale.ROOT);
  }

  /** What the scale is called among the results. */
  static String scale(LifeDistribution family) {
    return family == LifeDistribution.EXPONENTIAL ? "mean" : "scale";
  }

  /**
   * Those that the settings ask for, else the usual.
   *
   * @throws UnusableData where they ask for one that there is not
   */
  static Set<LifeDistribution> of(EstimateSettings settings) {
    return settings.words(Setting.FAMILIES).map(words -> named(words, settings)).orElse(USUAL);
  }

  private static Set<LifeDistribution> named(List<String> words, EstimateSettings settings) {
    Set<LifeDistribution> named = EnumSet.noneOf(LifeDistribution.class);
    for (String word : words) {
      named.add(
          Arrays.stream(LifeDistribution.values())
              .filter(family -> word(family).equals(word))
              .findFirst()
              .orElseThrow(
                  () ->
                      settings.unusable(
                          Setting.FAMILIES,
                          "there is no %s; there are %s".formatted(word, words()))));
    }
    return named;
  }

  private static String words() {
    return Arrays.stream(LifeDistribution.values())
        .map(FitFamilies::word)
        .collect(Collectors.joining(", "));
  }
}
