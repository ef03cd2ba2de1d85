package leadline.estimate;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;

/** Distributions that a user can ask for by a word, which begins the names of their results. */
enum FitFamily {
  EXPONENTIAL("exponential"),
  WEIBULL("weibull"),
  LOGNORMAL("lognormal"),
  LOG_LOGISTIC("log_logistic");

  private final String word;

  FitFamily(String word) {
    this.word = word;
  }

  String word() {
    return word;
  }

  static Optional<FitFamily> of(String word) {
    return Arrays.stream(values()).filter(family -> family.word.equals(word)).findFirst();
  }

  static String words() {
    return Arrays.stream(values()).map(FitFamily::word).collect(Collectors.joining(", "));
  }
}
