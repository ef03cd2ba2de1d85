package leadline.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.hipparchus.random.RandomGenerator;
import org.hipparchus.random.Well19937c;

/**
 * How often nominal 95 % limits enclose the truth, by simulation. Each design draws from a
 * generator of its own, seeded alike.
 */
final class CoverageStudy {

  static final int GENERATOR = 20_267;

  private static final double[] SHAPES = {1, 2, 3.5};
  private static final double[] FAILURES = {3, 5, 10, 30};

  /** How the names of the methods in each column begin. */
  private static final List<String> COLUMNS =
      List.of(
          "profile",
          "widened profile",
          "Wald",
          "shape known: profile",
          "shape known: chi-squared",
          "Kaplan-Meier, log(-log)",
          "Kaplan-Meier, plain",
          "restricted mean, normal",
          "restricted mean, logit");

  private CoverageStudy() {}

  /**
   * Prints a line for each design and method, then of each method the least coverage over the
   * shapes; the argument is the replications.
   */
  public static void main(String[] arguments) {
    int replications = Integer.parseInt(arguments[0]);
    print("| design | shape | method | covered | true below | true above | without limits |");
    print(" covered of all |%n|---|---|---|---|---|---|---|---|%n");
    Map<String, Map<String, List<Coverage>>> byDesign = new LinkedHashMap<>();
    designs()
        .forEach(
            design ->
                of(design, replications)
                    .forEach(
                        (method, coverage) -> {
                          print(
                              "| %s | %.1f | %s | %s |%n",
                              design, design.shape(), method, coverage);
                          byDesign
                              .computeIfAbsent(design.toString(), none -> new LinkedHashMap<>())
                              .computeIfAbsent(method, none -> new ArrayList<>())
                              .add(coverage);
                        }));
    print("%nThe least coverage over the shapes; the greatest share without a Weibull maximum%n%n");
    print("| design | none | %s |%n", String.join(" | ", COLUMNS));
    byDesign.forEach(
        (design, coverages) -> {
          print("| %s | %s |", design, without(coverages));
          COLUMNS.forEach(method -> print(" %s |", least(coverages, method)));
          print("%n");
        });
    ExactCoverage.print();
  }

  private static String without(Map<String, List<Coverage>> coverages) {
    return "%.1f"
        .formatted(
            coverages.getOrDefault("profile shape", List.of()).stream()
                .mapToDouble(Coverage::shareWithout)
                .max()
                .orElseThrow());
  }

  private static String least(Map<String, List<Coverage>> coverages, String beginning) {
    return coverages.entrySet().stream()
        .filter(entry -> entry.getKey().startsWith(beginning))
        .map(
            entry ->
                "%.1f"
                    .formatted(
                        entry.getValue().stream().mapToDouble(Coverage::share).min().orElseThrow()))
        .collect(Collectors.joining("/"));
  }

  static Map<String, Coverage> of(Design design, int replications) {
    RandomGenerator random = new Well19937c(GENERATOR);
    Map<String, Coverage> coverages = new LinkedHashMap<>();
    for (int replication = 0; replication < replications; replication++) {
      Answer.all(design, design.draw(random))
          .forEach(
              answer ->
                  coverages.merge(
                      answer.method(),
                      Coverage.of(answer.limits(), answer.truth()),
                      Coverage::plus));
    }
    return coverages;
  }

  /** Heavy censoring, inspections only, and last as many lives still running as ended. */
  private static Stream<Design> designs() {
    Stream<Design> heavy =
        Stream.of(
                Design.followedTo(8000),
                Design.followedUpTo(16_000),
                Design.openedEvery(4000, 4),
                Design.openedEvery(8000, 2),
                Design.openedOnce(16_000))
            .flatMap(
                watch -> ofEachShape((failures, shape) -> Design.of(watch, 200, failures, shape)));
    Stream<Design> light =
        Stream.of(Design.followedUpTo(16_000), Design.openedEvery(5000, 4))
            .flatMap(
                watch ->
                    ofEachShape(
                        (failures, shape) ->
                            Design.of(watch, (int) (2 * failures), failures, shape)));
    Design forty = Design.of(Design.openedEvery(5000, 4), 40, 10, 2);
    return Stream.of(heavy, light, Stream.of(forty)).flatMap(designs -> designs);
  }

  private interface OfFailuresAndShape {
    Design design(double failures, double shape);
  }

  private static Stream<Design> ofEachShape(OfFailuresAndShape making) {
    return DoubleStream.of(FAILURES)
        .boxed()
        .flatMap(
            failures -> DoubleStream.of(SHAPES).mapToObj(shape -> making.design(failures, shape)));
  }

  private static void print(String format, Object... figures) {
    System.out.printf(Locale.ROOT, format, figures);
  }
}
