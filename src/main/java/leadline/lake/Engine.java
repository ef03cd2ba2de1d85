package leadline.lake;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.spark.SparkConf;
import org.apache.spark.api.java.JavaSparkContext;
import org.apache.spark.api.java.function.Function;

/**
 * The Spark engine, started when it is first needed: local unless the submitter chose a master.
 * Spark runs once in a process, so engines share it; it stops when the last of them is closed.
 */
public final class Engine implements AutoCloseable {

  /** What a local run needs; a submitter's own settings win. */
  private static final Map<String, String> LOCAL =
      Map.of(
          "spark.master", "local[*]",
          "spark.driver.host", "127.0.0.1",
          "spark.driver.bindAddress", "127.0.0.1",
          "spark.ui.enabled", "false",
          "spark.ui.showConsoleProgress", "false");

  /** Pieces differ in size: more slices than cores let an idle core take over. */
  private static final int SLICES_PER_CORE = 8;

  private static final Set<Engine> RUNNING = new HashSet<>();

  private static Optional<JavaSparkContext> shared = Optional.empty();

  /** The context that this process runs; the first call starts it. */
  JavaSparkContext context() {
    synchronized (RUNNING) {
      RUNNING.add(this);
      JavaSparkContext context = shared.orElseGet(() -> new JavaSparkContext(configuration()));
      shared = Optional.of(context);
      return context;
    }
  }

  private static SparkConf configuration() {
    SparkConf conf = new SparkConf().setAppName("leadline");
    if (!conf.contains("spark.master")) {
      LOCAL.forEach(conf::setIfMissing);
    }
    return conf;
  }

  /** How many tasks to cut so many pieces of work into: no more than keep every core busy. */
  int slicesFor(int pieces) {
    return Math.max(1, Math.min(pieces, context().defaultParallelism()));
  }

  /** Works out each piece by itself, spread over the engine; the results in the pieces' order. */
  public <T, R> List<R> each(List<T> pieces, Function<T, R> work) {
    return pieces.isEmpty()
        ? List.of()
        : context()
            .parallelize(pieces, SLICES_PER_CORE * slicesFor(pieces.size()))
            .map(work)
            .collect();
  }

  @Override
  public void close() {
    synchronized (RUNNING) {
      if (RUNNING.remove(this) && RUNNING.isEmpty()) {
        shared.ifPresent(JavaSparkContext::stop);
        shared = Optional.empty();
      }
    }
  }
}
