package leadline.problem;

import java.util.Locale;

/** The name of a rule: that of the record which reports it, in lower case with hyphens. */
final class RuleName {

  private RuleName() {}

  static String of(Class<?> fault) {
    return fault
        .getSimpleName()
        .replaceAll("(?<=[a-z0-9])(?=[A-Z])|(?<=[A-Z])(?=[A-Z][a-z])", "-")
        .toLowerCase(Locale.ROOT);
  }
}
