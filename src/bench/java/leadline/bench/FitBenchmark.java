package leadline.bench;

import java.util.List;
import java.util.concurrent.TimeUnit;
import leadline.stats.Confidence;
import leadline.stats.Life;
import leadline.stats.LifeData;
import leadline.stats.LifeFamily;
import leadline.stats.LifeFit;
import leadline.stats.LifeQuantity;
import leadline.stats.Limits;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** A Weibull distribution fitted to 250 lives of mixed censoring. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 9, time = 1)
@Fork(1)
public class FitBenchmark {

  private static final Confidence CONFIDENCE = Confidence.of(0.95);

  private static final List<LifeQuantity> QUANTITIES =
      List.of(LifeQuantity.shape(), LifeQuantity.scale(), LifeQuantity.quantile(0.1));

  private final List<Life> lives = GeneratedLives.mixed();
  private final LifeData data = LifeData.of(lives);

  /** The estimates alone. */
  @Benchmark
  public LifeFit point() {
    return fit(data);
  }

  /** With profile limits of shape, scale and B10. */
  @Benchmark
  public List<Limits> withLimits() {
    LifeFit fit = fit(data);
    return QUANTITIES.stream().map(quantity -> fit.profileLimits(quantity, CONFIDENCE)).toList();
  }

  /** The estimates alone, equal lives gathered first. */
  @Benchmark
  public LifeFit pointFromRows() {
    return fit(LifeData.of(lives));
  }

  static LifeFit fit(LifeData data) {
    return LifeFit.of(LifeFamily.WEIBULL, data).fit().orElseThrow();
  }
}
