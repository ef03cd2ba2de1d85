package leadline.bench;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.DoubleStream;
import leadline.stats.Life;
import leadline.stats.LifeData;
import leadline.stats.LifeFit;
import leadline.stats.LifeQuantity;
import org.openjdk.jmh.results.IterationResult;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.ChainedOptionsBuilder;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.VerboseMode;

/** Runs the benchmarks and R's fit, prints medians and ratios, and tells which limit is missed. */
public final class StatisticsSpeed {

  private static final double MOST_POINT_FITS = 20;
  private static final double LEAST_TIMES_FASTER = 5;
  private static final double SAME_ESTIMATE = 1e-4;
  private static final double MOST_MILLISECONDS = 1000;

  private final List<String> missed = new ArrayList<>();

  private StatisticsSpeed() {}

  /** Takes the script for R; exits with 1 where a limit is missed. */
  public static void main(String[] arguments) throws RunnerException {
    StatisticsSpeed speed = new StatisticsSpeed();
    speed.fits(Path.of(arguments[0]));
    speed.curves();
    speed.missed.forEach(limit -> System.err.println("Missed: " + limit));
    System.exit(speed.missed.isEmpty() ? 0 : 1);
  }

  private void fits(Path script) throws RunnerException {
    List<Life> lives = GeneratedLives.mixed();
    RSurvival first = RSurvival.of(lives, script);
    Collection<RunResult> results = run(FitBenchmark.class);
    RSurvival r = RSurvival.of(lives, script).orFaster(first);
    double point = processorMicroseconds(results, "point");
    double withLimits = processorMicroseconds(results, "withLimits");
    double fromRows = processorMicroseconds(results, "pointFromRows");
    print("Processor time of a Weibull fit of %d lives, in microseconds:%n", lives.size());
    print("%.1f alone, %.1f with limits of shape, scale and B10%n", point, withLimits);
    print("%.1f from rows%n", fromRows);
    print("%.1f alone in R, %.1f from rows%n", r.alone(), r.fromRows());
    atMost(MOST_POINT_FITS, withLimits / point, "fit with limits / point fit");
    atLeast(LEAST_TIMES_FASTER, r.fromRows() / fromRows, "R / ours, from rows");
    print("R / ours, alone, by survreg's inner function: %.4g%n", r.alone() / point);
    LifeFit fit = FitBenchmark.fit(LifeData.of(lives));
    atMost(
        SAME_ESTIMATE,
        Math.abs(fit.estimate(LifeQuantity.shape()) / r.shape() - 1),
        "difference of shape from R's");
    atMost(
        SAME_ESTIMATE,
        Math.abs(fit.estimate(LifeQuantity.scale()) / r.scale() - 1),
        "difference of scale from R's");
  }

  private void curves() throws RunnerException {
    print("The first estimate in a process, in milliseconds:%n");
    for (RunResult result : run(CurveBenchmark.class)) {
      String label = result.getPrimaryResult().getLabel();
      for (String parameter : result.getParams().getParamsKeys()) {
        label += ", " + parameter + " " + result.getParams().getParam(parameter);
      }
      double milliseconds =
          median(
              result.getBenchmarkResults().stream()
                  .flatMap(fork -> fork.getIterationResults().stream())
                  .mapToDouble(iteration -> iteration.getPrimaryResult().getScore()));
      atMost(MOST_MILLISECONDS, milliseconds, label);
    }
  }

  private static Collection<RunResult> run(Class<?> benchmark) throws RunnerException {
    ChainedOptionsBuilder options =
        new OptionsBuilder().include(benchmark.getName()).verbosity(VerboseMode.SILENT);
    return new Runner(options.addProfiler(ProcessorTime.class).build()).run();
  }

  private static double processorMicroseconds(Collection<RunResult> results, String name) {
    return median(
        results.stream()
            .filter(result -> result.getPrimaryResult().getLabel().equals(name))
            .flatMap(result -> result.getBenchmarkResults().stream())
            .flatMap(fork -> fork.getIterationResults().stream())
            .mapToDouble(StatisticsSpeed::processorMicroseconds));
  }

  private static double processorMicroseconds(IterationResult iteration) {
    return Objects.requireNonNull(iteration.getSecondaryResults().get(ProcessorTime.MICROSECONDS))
        .getScore();
  }

  private static double median(DoubleStream figures) {
    double[] sorted = figures.sorted().toArray();
    return (sorted[(sorted.length - 1) / 2] + sorted[sorted.length / 2]) / 2;
  }

  private void atMost(double limit, double figure, String what) {
    judge(figure <= limit, figure, what, "at most " + limit);
  }

  private void atLeast(double limit, double figure, String what) {
    judge(figure >= limit, figure, what, "at least " + limit);
  }

  private void judge(boolean held, double figure, String what, String limit) {
    print("%s: %.4g (%s)%n", what, figure, limit);
    if (!held) {
      missed.add(what);
    }
  }

  private static void print(String format, Object... figures) {
    System.out.printf(Locale.ROOT, format, figures);
  }
}
