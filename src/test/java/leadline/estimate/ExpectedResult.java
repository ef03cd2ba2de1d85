package leadline.estimate;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A result and how far from it is still right.
 *
 * @param value a number, word or truth, or a list of them
 */
record ExpectedResult(String name, JsonNode value, double relative, double absolute) {

  private static final String STATUS = ".status";
  private static final Set<String> STATUS_WORDS =
      Set.of("no-finite-maximum", "insufficient", "boundary");

  /** Cross-checks by another formula, and the results of the same quantity. */
  private static final Map<String, List<String>> SAME_QUANTITY =
      Map.of(
          "age.hazard_identity", List.of("age.cost_rate_opt"),
          "exponential.rate_closed_form", List.of("exponential.rate"),
          "lognormal.closed_form_mu_sigma", List.of("lognormal.mu", "lognormal.sigma"));

  static ExpectedResult of(JsonNode check) {
    return new ExpectedResult(
        check.required("name").textValue(),
        check.required("value"),
        check.path("tol_rel").doubleValue(),
        check.path("tol_abs").doubleValue());
  }

  /** Whether a method whose results' names begin so prints this one, perhaps for a set. */
  boolean isPrintedUnder(String prefix) {
    return name.startsWith(prefix) || name.contains("." + prefix);
  }

  /** What is wrong with these results; more results than expected do no harm. */
  List<String> differences(JsonNode results) {
    if (name.endsWith(STATUS)) {
      return statusDifference(results.path(name)).stream().toList();
    }
    List<JsonNode> expected = elements(value);
    List<JsonNode> actual = new ArrayList<>();
    for (String same : SAME_QUANTITY.getOrDefault(name, List.of(name))) {
      if (!results.has(same)) {
        return List.of(same + ": not computed");
      }
      actual.addAll(elements(results.required(same)));
    }
    if (actual.size() != expected.size()) {
      return List.of(name + ": " + expected.size() + " values expected, not " + actual.size());
    }
    List<String> differences = new ArrayList<>();
    for (int index = 0; index < expected.size(); index++) {
      if (!isRight(expected.get(index), actual.get(index))) {
        differences.add(
            "%s[%d]: %s, not %s".formatted(name, index, expected.get(index), actual.get(index)));
      }
    }
    return differences;
  }

  /** A case spells a status in its own way: it asks for the behaviour. */
  private Optional<String> statusDifference(JsonNode actual) {
    boolean fine = value.asText().equals("OK");
    boolean right =
        fine
            ? actual.isMissingNode() || actual.asText().equals("ok")
            : STATUS_WORDS.contains(actual.asText());
    return right ? Optional.empty() : Optional.of(name + ": " + value + ", not " + actual);
  }

  private boolean isRight(JsonNode expected, JsonNode actual) {
    if (!expected.isNumber()) {
      return expected.equals(actual);
    }
    double number = expected.doubleValue();
    return actual.isNumber()
        && Math.abs(actual.doubleValue() - number) <= absolute + relative * Math.abs(number);
  }

  private static List<JsonNode> elements(JsonNode value) {
    List<JsonNode> elements = new ArrayList<>();
    (value.isArray() ? value : List.of(value)).forEach(elements::add);
    return elements;
  }
}
