package leadline.lake;

import java.util.Map;
import java.util.Optional;
import org.apache.spark.SparkConf;
import org.apache.spark.api.java.JavaSparkContext;

/** The Spark engine, started when it is first needed: local unless the submitter chose a master. */
public final class Engine implements AutoCloseable {

  /** What a local run needs; a submitter's own settings win. */
  private static final Map<String, String> LOCAL =
      Map.of(
          "spark.master", "local[*]",
          "spark.driver.host", "127.0.0.1",
          "spark.driver.bindAddress", "127.0.0.1",
          "spark.ui.enabled", "false",
          "spark.ui.showConsoleProgress", "false");

  private Optional<JavaSparkContext> running = Optional.empty();

  /** The engine's context; the first call starts the engine. */
  synchronized JavaSparkContext context() {
    if (running.isEmpty()) {
      running = Optional.of(new JavaSparkContext(configuration()));
    }
    return running.get();
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

  @Override
  public synchronized void close() {
    running.ifPresent(JavaSparkContext::stop);
    running = Optional.empty();
  }
}
