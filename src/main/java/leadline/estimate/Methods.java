package leadline.estimate;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * All methods, in the order of the table that users read:
 *
 * <table>
 * <caption>Methods</caption>
 * <tr><th>METHOD</th><th>prints</th><th>reads</th></tr>
 * <tr><td>{@code kaplan-meier}</td><td>{@code km.*}, {@code na.*} (Nelson-Aalen)</td>
 *     <td>lives, exact and right-censored</td></tr>
 * <tr><td>{@code fit}</td><td>{@code exponential.*}, {@code weibull.*}, {@code lognormal.*},
 *     {@code log_logistic.*}, {@code weibull_fixed_shape_B.*} for each B of the setting
 *     {@code fixed_shapes}</td><td>lives of any censoring, delayed entry</td></tr>
 * <tr><td>{@code rate}</td><td>{@code rate.*}, {@code mtbf.*}</td><td>counts</td></tr>
 * <tr><td>{@code proportion}</td><td>{@code clopper_pearson.*}, {@code wilson.*}</td>
 *     <td>pairs x, n</td></tr>
 * <tr><td>{@code rate-ratio}</td><td>{@code ratio.*}</td><td>pairs x1, t1, x2, t2</td></tr>
 * </table>
 */
public final class Methods {

  static final List<Method> ALL =
      List.of(
          new KaplanMeierMethod(),
          new FitMethod(),
          new RateMethod(),
          new ProportionMethod(),
          new RateRatioMethod());

  private Methods() {}

  /** The words of all methods. */
  public static List<String> words() {
    return ALL.stream().map(Method::word).toList();
  }

  /** One line for each method: its word, what it reads. */
  public static List<String> lines() {
    return ALL.stream()
        .map(method -> "  %-16s %s".formatted(method.word(), method.reads()))
        .toList();
  }

  /**
   * Runs a method on a file; the sets of one with a {@code set} column each apart, likewise the
   * groups of one with a {@code group} column unless the method compares them, the names of a
   * part's results beginning with the part's name and a dot.
   *
   * @throws UnusableData where there is no such method, or the file or the settings are of no use
   *     to it
   */
  public static EstimateResults run(String word, DataFile file, EstimateSettings settings) {
    Method method =
        named(word)
            .orElseThrow(
                () ->
                    new UnusableData(
                        "There is no method %s; there are %s."
                            .formatted(word, String.join(", ", words()))));
    return file.header().has(DataFile.SET)
        ? ofEach(file.by(DataFile.SET), part -> groupsOf(method, part, settings))
        : groupsOf(method, file, settings);
  }

  private static Optional<Method> named(String word) {
    return ALL.stream().filter(method -> method.word().equals(word)).findFirst();
  }

  private static EstimateResults groupsOf(Method method, DataFile file, EstimateSettings settings) {
    return switch (method.groups()) {
      case COMPARED -> method.of(file, settings);
      case APART ->
          file.header().has(DataFile.GROUP)
              ? ofEach(file.by(DataFile.GROUP), part -> method.of(part, settings))
              : method.of(file, settings);
    };
  }

  private static EstimateResults ofEach(Map<String, DataFile> parts, Estimator estimator) {
    EstimateResults all = new EstimateResults();
    parts.forEach((name, part) -> all.addAll(name + ".", estimator.of(part)));
    return all;
  }

  private interface Estimator {
    EstimateResults of(DataFile part);
  }
}
