package leadline.estimate;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;

/** What a user may choose; each is a name in a settings file and an option of the command. */
public enum Setting {
  CONF("conf", "P", "Confidence of the limits, more than 0 and less than 1; 0.95 if not given."),
  FAMILIES(
      "families",
      "WORDS",
      "Distributions to fit, of exponential, weibull, lognormal, gamma, log_logistic; the first three"
          + " if absent."),
  FIXED_SHAPES("fixed_shapes", "NUMBERS", "Weibull shapes to assume; 1.5, 2.0, 3.0 if absent."),
  SURVIVAL_AT("survival_at", "AGES", "Ages for the share that outlives them."),
  NEXT_HOURS(
      "next_hours",
      "HOURS",
      "For each age of survival_at, the chance to fail in so many hours beyond it."),
  SIMULATIONS("simulations", "COUNT", "How many sets of lives to draw, 19 or more; 999 if absent."),
  START("start", "NUMBER", "Where the sequence of random numbers starts; 1 if absent."),
  TRUNCATION(
      "truncation", "WORD", "What ended observation, time or failure; the data tell if absent."),
  ASSURANCE(
      "assurance", "P", "Chance that spares suffice, more than 0 and less than 1; 0.95 if absent."),
  CONDITIONAL_ON(
      "conditional_on",
      "AGE",
      "Survival given that this age was reached; from the start if absent."),
  QUANTILES("quantiles", "SHARES", "Shares ended, for the times by which they have, with limits."),
  HORIZON("horizon", "TIME", "Up to which the mean of durations is taken, with limits."),
  COVARIATES(
      "covariates",
      "COLUMNS",
      "What may bear on how soon lives end; group and all x_... if absent.");

  private final String word;
  private final String placeholder;
  private final String meaning;

  Setting(String word, String placeholder, String meaning) {
    this.word = word;
    this.placeholder = placeholder;
    this.meaning = meaning;
  }

  /** Its name in a settings file. */
  public String word() {
    return word;
  }

  /** Its option on the command line. */
  public String option() {
    return "--" + word.replace('_', '-');
  }

  /** What to write behind the option; several are parted by commas. */
  public String placeholder() {
    return placeholder;
  }

  public String meaning() {
    return meaning;
  }

  static Optional<Setting> of(String word) {
    return Arrays.stream(values()).filter(setting -> setting.word.equals(word)).findFirst();
  }

  static String words() {
    return Arrays.stream(values()).map(Setting::word).collect(Collectors.joining(", "));
  }
}
