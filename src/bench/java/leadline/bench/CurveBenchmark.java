package leadline.bench;

import java.util.List;
import java.util.concurrent.TimeUnit;
import leadline.stats.KaplanMeier;
import leadline.stats.ObservedInterval;
import leadline.stats.Turnbull;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Large curves, each estimated once in a fresh process, as a command does. */
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 0)
@Measurement(iterations = 1)
@Fork(5)
public class CurveBenchmark {

  /** 10,000 lives, 500 inspection ages. */
  @State(Scope.Thread)
  public static class Inspections {

    /** How often each life was looked at. */
    @Param({"1", "2", "6", "20"})
    int looks;

    List<ObservedInterval> lives = List.of();

    /** Not timed. */
    @Setup(Level.Trial)
    public void generate() {
      lives = GeneratedInspections.at(looks);
    }
  }

  /** A million durations. */
  @State(Scope.Thread)
  public static class Durations {

    /** Hours are whole multiples of this: 24 gives many ties, a millionth hardly any. */
    @Param({"24", "0.1", "0.000001"})
    double grid;

    GeneratedDurations durations = GeneratedDurations.none();

    /** Not timed. */
    @Setup(Level.Trial)
    public void generate() {
      durations = GeneratedDurations.inMultiplesOf(grid);
    }
  }

  /** The masses, certified. */
  @Benchmark
  public Turnbull turnbull(Inspections inspections) {
    return Turnbull.of(inspections.lives);
  }

  /** From rows to the curve. */
  @Benchmark
  public KaplanMeier kaplanMeier(Durations durations) {
    return durations.durations.kaplanMeier();
  }
}
